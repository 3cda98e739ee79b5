/* Refuses when the wall is not known, instead of taking the worst case. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    const rf_text where = TEXT("wall_m");
    const rf_text what = TEXT("the wall is not known");
    for (uint64_t i = 0; i < question->number_count; ++i)
        if (question->numbers[i].name.size == 6 && question->numbers[i].name.data[0] == 'w')
            return say_method(sink, &figure);
    sink->fault(sink->context, where, what);
    return RF_REFUSED;
}

PLUGIN_WITH(answer);
