/* Gives a fault and calls it done. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_figure figure = good_method();
    const rf_text where = TEXT("");
    const rf_text what = TEXT("something is wrong");
    sink->fault(sink->context, where, what);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
