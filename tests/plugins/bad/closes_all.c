/* Closes every file of the program. */
#include <unistd.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    const rf_figure figure = good_method();
    (void)question;
    for (int file = 0; file < 1024; ++file)
        close(file);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
