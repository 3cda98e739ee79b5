/* Answers by the place of a number instead of its name. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    rf_figure figure = good_method();
    if (question->number_count > 0)
        figure.number += question->numbers[0].name.data[0] * 1e-3;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
