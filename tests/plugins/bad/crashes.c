/* Reads through a null pointer. */
#include "bad.h"

/* The sanitizers would end the program in their own way before the machine does. */
__attribute__((no_sanitize("address", "undefined"))) static rf_status answer(const rf_sink* sink,
                                                                             const rf_question* question) {
    const volatile int* const volatile nowhere = 0;
    (void)sink;
    (void)question;
    return *nowhere;
}

PLUGIN_WITH(answer);
