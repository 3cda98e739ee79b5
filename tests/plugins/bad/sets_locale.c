/* Changes the locale, which can bring another decimal point. */
#include <locale.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_figure figure = good_method();
    setlocale(LC_ALL, "C.UTF-8");
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
