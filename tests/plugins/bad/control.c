/* A note with a control character. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_method();
    const rf_text text = TEXT("red \033[31m");
    figure.note = text;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
