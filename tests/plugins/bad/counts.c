/* Keeps a state: each answer differs from the one before. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    static double more = 0;
    rf_figure figure = good_method();
    more += 1e-9;
    figure.number += more;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
