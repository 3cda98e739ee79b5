/* Exports more than a plugin may: another's function of that name could be taken for it. */
#include "bad.h"

extern __attribute__((visibility("default"))) double helper(double kelvin);
double helper(double kelvin) {
    return kelvin + 1;
}

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
