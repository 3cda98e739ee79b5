/* A status that there is not. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_figure figure = good_method();
    say_method(sink, &figure);
    return 7;
}

PLUGIN_WITH(answer);
