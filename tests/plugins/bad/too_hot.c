/* A minimum hotter than metal stays solid to weld on. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_method();
    figure.number = 1500;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
