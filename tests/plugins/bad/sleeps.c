/* Takes three seconds for its first answer. */
#include <unistd.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    static int asked = 0;
    const rf_figure figure = good_method();
    (void)question;
    if (!asked++)
        sleep(3);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
