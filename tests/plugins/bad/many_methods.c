/* More methods than anyone can weigh. */
#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    rf_figure figure = good_method();
    char name[] = "method AA";
    figure.name.data = name;
    figure.name.size = sizeof name - 1;
    for (int i = 0; i < 65; ++i) {
        name[7] = (char)('A' + i / 26);
        name[8] = (char)('A' + i % 26);
        sink->method(sink->context, &figure);
    }
    return RF_DONE;
}

PLUGIN_WITH(answer);
