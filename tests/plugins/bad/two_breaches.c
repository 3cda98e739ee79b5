/* Breaks two rules: the first is told. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_text source = TEXT("");
    rf_figure figure = good_method();
    figure.number = 100;
    sink->method(sink->context, &figure);
    figure.number = 400;
    figure.source = source;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
