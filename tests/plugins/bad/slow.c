/* Breaks no rule, yet takes its time the first time it is asked: longer than anybody waits without a word. */
#define _POSIX_C_SOURCE 199309L
#include <time.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    static int asked = 0;
    const struct timespec a_while = {0, 900000000L};
    const rf_figure figure = good_method();
    (void)question;
    if (!asked) {
        asked = 1;
        nanosleep(&a_while, NULL);
    }
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
