/* Says nothing and is done. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    (void)sink;
    return RF_DONE;
}

PLUGIN_WITH(answer);
