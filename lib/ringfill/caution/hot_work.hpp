#pragma once

#include <ringfill/caution/caution.hpp>

namespace ringfill {

/// What every job is told while no preheat is worked out: where to take it from, and what rules.
Caution hot_work();

} // namespace ringfill
