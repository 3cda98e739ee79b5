/* Both no preheat needed and preheat without a figure. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_method();
    figure.flags = RF_NONE_NEEDED | RF_NO_FIGURE;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
