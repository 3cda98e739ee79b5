#pragma once

#include <ringfill/fault/fault.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/weld/bead.hpp>

namespace ringfill {

/// The fault of a bore that its layers close before they reach the size to weld to.
Fault ring_closes(const WornBore& bore, const Bead& bead);

} // namespace ringfill
