/* A flag that version 1.0 does not have. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_method();
    figure.flags = 128;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
