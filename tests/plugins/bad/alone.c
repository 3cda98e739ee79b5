/* Breaks no rule: it refuses to answer where it is asked again before it has answered, on another thread. */
#define _POSIX_C_SOURCE 199309L
#include <stdatomic.h>
#include <time.h>

#include "bad.h"

static atomic_int inside;

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const struct timespec a_while = {0, 2000000L};
    const rf_text nowhere = TEXT("");
    const rf_text what = TEXT("was asked twice at once");
    const rf_figure figure = good_method();
    rf_status status = RF_REFUSED;
    (void)question;
    if (atomic_fetch_add(&inside, 1) > 0)
        sink->fault(sink->context, nowhere, what);
    else
        status = say_method(sink, &figure);
    nanosleep(&a_while, NULL);
    atomic_fetch_sub(&inside, 1);
    return status;
}

PLUGIN_WITH(answer);
