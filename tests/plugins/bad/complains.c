/* Prints to standard error as soon as it is loaded. */
#include <unistd.h>

#include "bad.h"

__attribute__((constructor)) static void hello(void) {
    if (write(STDERR_FILENO, "hello", 5) != 5)
        _exit(1);
}

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
