/* More inputs than any formula has. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_method();
    figure.input_count = 65;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
