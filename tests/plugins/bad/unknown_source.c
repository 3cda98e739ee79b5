/* A source that is in no bibliography. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_method();
    const rf_text text = TEXT("nowhere");
    figure.source = text;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
