// Throws what is no exception across the interface.
#include <stdexcept>

#include "bad.h"

static rf_status answer(const rf_sink*, const rf_question*) {
    throw 42;
}

PLUGIN_POINTING_TO(reinterpret_cast<rf_answer>(answer));
