/* More advice than anyone can read. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_text kind = TEXT("technique");
    const rf_text text = TEXT("Keep the arc short.");
    const rf_text source = TEXT("practice");
    const rf_figure figure = good_method();
    (void)question;
    for (int i = 0; i < 65; ++i)
        sink->advice(sink->context, kind, text, source);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
