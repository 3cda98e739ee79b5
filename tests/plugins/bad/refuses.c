/* Refuses, and says why: no rule is broken, but there is no answer. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_text where = TEXT("wall_m");
    const rf_text what = TEXT("the wall is thicker than any that was tried");
    sink->fault(sink->context, where, what);
    return RF_REFUSED;
}

PLUGIN_WITH(answer);
