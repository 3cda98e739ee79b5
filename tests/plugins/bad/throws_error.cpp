// Throws an exception across the interface.
#include <stdexcept>

#include "bad.h"

static rf_status answer(const rf_sink*, const rf_question*) {
    throw std::runtime_error("the rule failed");
}

PLUGIN_POINTING_TO(reinterpret_cast<rf_answer>(answer));
