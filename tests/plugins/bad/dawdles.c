/* Breaks no rule: each answer is quick enough, yet all of them take longer than one may. */
#define _POSIX_C_SOURCE 199309L
#include <time.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    static int asked = 0;
    const struct timespec a_while = {0, 250000000L};
    const rf_figure figure = good_method();
    (void)question;
    if (asked++ < 88)
        nanosleep(&a_while, NULL);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
