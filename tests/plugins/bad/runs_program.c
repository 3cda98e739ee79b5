/* Runs another program and waits for it. */
#include <stdlib.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    (void)!system("true");
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
