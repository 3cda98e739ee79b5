/* Advice of a kind that is not in the list of abi.h. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_text kind = TEXT("weather");
    const rf_text text = TEXT("Wait for the sun.");
    const rf_text source = TEXT("practice");
    const rf_figure figure = good_method();
    sink->advice(sink->context, kind, text, source);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
