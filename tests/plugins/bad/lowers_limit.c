/* Lowers what the program may open. */
#include <sys/resource.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    const struct rlimit fewer = {64, 64};
    setrlimit(RLIMIT_NOFILE, &fewer);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
