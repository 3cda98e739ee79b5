/* Gives a value and no method. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_figure value = good_value();
    sink->value(sink->context, &value);
    return RF_DONE;
}

PLUGIN_WITH(answer);
