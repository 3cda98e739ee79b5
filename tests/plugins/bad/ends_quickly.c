/* Ends the program by the quick way. */
#include <stdlib.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    quick_exit(0);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
