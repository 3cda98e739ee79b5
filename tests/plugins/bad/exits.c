/* Ends the program. */
#include <stdlib.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    (void)sink;
    exit(0);
}

PLUGIN_WITH(answer);
