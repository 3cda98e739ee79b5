/* Lets standard output lead to nowhere. */
#include <fcntl.h>
#include <unistd.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    dup2(open("/dev/null", O_WRONLY | O_CLOEXEC), STDOUT_FILENO);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
