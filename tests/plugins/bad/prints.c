/* Prints, though the output is the program's. */
#include <stdio.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_figure figure = good_method();
    printf("thinking\n");
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
