/* A value in degrees Celsius where its name says kelvin. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_value();
    const rf_text text = TEXT("interpass_max_K");
    figure.name = text;
    figure.number = 180;
    return say_value(sink, &figure);
}

PLUGIN_WITH(answer);
