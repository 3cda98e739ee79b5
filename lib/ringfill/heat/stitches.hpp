#pragma once

#include <vector>

#include <ringfill/heat/ring_times.hpp>

// Iron that is laid cold is not welded in whole rings: it is laid in stitches of 25 to 50 mm, each peened
// while it is hot, the next at another place (section 10 of the computation).

namespace ringfill {

/// The longest stitch.
inline const Length longest_stitch = in_si<Length>(0.05);

/// The passes in stitches instead of rings, those of a pass all alike and none longer than the longest.
std::vector<RingPass> in_stitches(const std::vector<RingPass>& passes);

/// A stitch begins once the part has come down to this: two thirds of the way from the air to the maximum.
Temperature stitch_begins_under(Temperature air, Temperature maximum);

} // namespace ringfill
