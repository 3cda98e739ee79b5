#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// A run of pauses that are told as one, since a torch is set to one dwell.
struct DwellStretch {
    std::size_t first = 0; ///< counted from 0
    std::size_t last = 0;
    Time longest; ///< of its pauses
    Time told;
};

/// More stretches than this in a layer nobody sets.
inline constexpr std::size_t most_stretches = 3;

/// The dwell that is told for pauses of which the longest is known: the longest, rounded up to 5 s; where
/// none is longer than the step-over, the step-over itself.
Time told_dwell(Time longest, Time step_over);

/// Cuts the pauses of a layer into at most three stretches of one told dwell each, so that the least time is
/// told more than is needed; of equals the fewer, then the earlier. Nothing for a pause that is listed apart,
/// which counts in no stretch. Empty for no pauses.
std::vector<DwellStretch> dwell_stretches(const std::vector<std::optional<Time>>& pauses, Time step_over);

} // namespace ringfill
