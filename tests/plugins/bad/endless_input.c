/* An input that is not finite. */
#include <math.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_method();
    static const rf_input inputs[] = {{TEXT("T"), INFINITY, TEXT("degC")}};
    figure.inputs = inputs;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
