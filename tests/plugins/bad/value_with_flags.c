/* A value with a flag of methods. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_value();
    figure.flags = RF_AT_EDGE;
    return say_value(sink, &figure);
}

PLUGIN_WITH(answer);
