/* Breaks no rule: uses its buffer again as soon as the sink returns. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    char buffer[] = "first";
    rf_figure figure = good_method();
    figure.name.data = buffer;
    figure.name.size = 5;
    sink->method(sink->context, &figure);
    buffer[0] = 'w';
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
