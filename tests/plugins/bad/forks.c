/* Goes on in two processes. */
#include <unistd.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    (void)!fork();
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
