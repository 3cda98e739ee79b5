/* A method that is null. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    return say_method(sink, 0);
}

PLUGIN_WITH(answer);
