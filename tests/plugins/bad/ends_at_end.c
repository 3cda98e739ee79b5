/* Ends the program with a status of its own when it ends. */
#include <unistd.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    return say_method(sink, &figure);
}

__attribute__((destructor)) static void at_once(void) {
    _exit(5);
}

PLUGIN_WITH(answer);
