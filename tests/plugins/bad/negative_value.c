/* A carbon equivalent below nothing. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_value();
    figure.number = -0.1;
    return say_value(sink, &figure);
}

PLUGIN_WITH(answer);
