/* Refuses without saying why. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    (void)sink;
    return RF_REFUSED;
}

PLUGIN_WITH(answer);
