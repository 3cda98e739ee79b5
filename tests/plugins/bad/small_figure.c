/* A figure without its last field. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_method();
    figure.size = 80;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
