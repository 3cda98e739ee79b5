/* Ends the program when it is loaded. */
#include <stdlib.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    return say_method(sink, &figure);
}

__attribute__((constructor)) static void at_once(void) {
    exit(0);
}

PLUGIN_WITH(answer);
