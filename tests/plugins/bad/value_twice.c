/* Two values of one name. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_figure figure = good_value();
    sink->value(sink->context, &figure);
    return say_value(sink, &figure);
}

PLUGIN_WITH(answer);
