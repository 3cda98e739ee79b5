/* Lets standard output lead to nowhere when it is loaded. */
#include <fcntl.h>
#include <unistd.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    return say_method(sink, &figure);
}

__attribute__((constructor)) static void at_once(void) {
    dup2(open("/dev/null", O_WRONLY | O_CLOEXEC), STDOUT_FILENO);
}

PLUGIN_WITH(answer);
