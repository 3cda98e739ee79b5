/* Changes the rights new files get. */
#include <sys/stat.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_figure figure = good_method();
    umask(0);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
