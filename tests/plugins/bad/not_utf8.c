/* A note in another encoding. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_method();
    const rf_text text = TEXT("K\xf6rnung");
    figure.note = text;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
