#pragma once

#include <support/sink.hpp>

#include "practice.hpp"

namespace ringfill::cast_iron {

/// Says how the bead is laid and how the part cools, for each practice. Nodular iron is never told to be
/// welded cold.
rf_status advise(const family::Sink& sink, Practice practice, bool nodular);

} // namespace ringfill::cast_iron
