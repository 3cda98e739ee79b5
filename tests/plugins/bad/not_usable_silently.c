/* A method that is not usable and does not say why. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_method();
    figure.flags = RF_NOT_USABLE;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
