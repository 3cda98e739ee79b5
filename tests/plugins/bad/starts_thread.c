/* Leaves a thread behind. */
#include <pthread.h>
#include <unistd.h>

#include "bad.h"

static void* forever(void* nothing) {
    for (;;)
        pause();
    return nothing;
}

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    static pthread_t thread;
    static int started = 0;
    const rf_figure figure = good_method();
    (void)question;
    if (!started)
        started = pthread_create(&thread, 0, forever, 0) == 0;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
