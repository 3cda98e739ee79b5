#pragma once

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// Radius from the target axis to a circle of radius r whose centre lies off the axis by e towards a clock
/// position, e cos φ + √(r² − e² sin² φ) with φ measured from that position [m]. Exact for e < r.
Length eccentric_radius(Length r, Length e, Angle from_offset);

} // namespace ringfill
