/* Leaves a process behind. */
#include <unistd.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    static int left = 0;
    (void)question;
    if (!left) {
        left = 1;
        if (fork() == 0)
            for (;;)
                pause();
    }
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
