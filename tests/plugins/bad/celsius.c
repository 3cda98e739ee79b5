/* A minimum in degrees Celsius. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_method();
    figure.number = 100;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
