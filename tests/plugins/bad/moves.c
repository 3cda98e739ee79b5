/* Changes the working directory. */
#include <unistd.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_figure figure = good_method();
    if (chdir("/") != 0)
        return RF_REFUSED;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
