/* A value that is not in the list of abi.h. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_value();
    const rf_text text = TEXT("hardness_HV");
    figure.name = text;
    return say_value(sink, &figure);
}

PLUGIN_WITH(answer);
