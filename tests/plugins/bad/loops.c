/* Never comes back. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    volatile int forever = 1;
    (void)sink;
    while (forever) {
    }
    return RF_DONE;
}

PLUGIN_WITH(answer);
