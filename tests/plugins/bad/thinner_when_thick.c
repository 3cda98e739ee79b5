/* Asks less of a thicker wall. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    rf_figure figure = good_method();
    for (uint64_t i = 0; i < question->number_count; ++i)
        if (question->numbers[i].name.size == 6 && question->numbers[i].name.data[0] == 'w')
            figure.number -= question->numbers[i].value;
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
