/* Answers topics that it cannot know. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    return say_method(sink, &figure);
}

PLUGIN_POINTING_TO(answer);
