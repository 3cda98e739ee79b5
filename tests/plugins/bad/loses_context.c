/* Hands back another context than it was given. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_figure figure = good_method();
    sink->method(0, &figure);
    return RF_DONE;
}

PLUGIN_WITH(answer);
