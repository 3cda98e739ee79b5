/* Leaves a signal blocked. */
#define _POSIX_C_SOURCE 199506L
#include <signal.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    sigset_t set;
    sigemptyset(&set);
    sigaddset(&set, SIGTERM);
    sigprocmask(SIG_BLOCK, &set, 0);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
