/* Leaves another rounding mode behind. */
#include <fenv.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_figure figure = good_method();
    fesetround(FE_UPWARD);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
