/* Takes the signal that a user stops the program with. */
#include <signal.h>

#include "bad.h"

static rf_status answer(const rf_sink* sink, const rf_question* question) {
    (void)question;
    const rf_figure figure = good_method();
    signal(SIGINT, SIG_IGN);
    return say_method(sink, &figure);
}

PLUGIN_WITH(answer);
