/* Leaves a function to run at the end of the program. */
#include <stdlib.h>

static void nothing(void) {}

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    atexit(nothing);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
