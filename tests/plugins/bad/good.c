/* Breaks no rule: what the others are measured by, and what the tests cut off and patch. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
