/* Leaves a trap behind that would end the program at the next division by zero. */
#define _GNU_SOURCE
#include <fenv.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    feenableexcept(FE_DIVBYZERO);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
