/* A note a byte longer than any text may be. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_method();
    static char words[RF_TEXT_LONGEST + 1];
    for (uint64_t i = 0; i < sizeof words; ++i)
        words[i] = 'x';
    figure.note.data = words;
    figure.note.size = sizeof words;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
