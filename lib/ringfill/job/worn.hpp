#pragma once

#include <cstddef>
#include <optional>
#include <variant>
#include <vector>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// A round bore worn to one side: one diameter, and how far its centre lies off the target axis.
struct WornDiameter {
    Length diameter;
    Length offset;
    Angle offset_clock; ///< where the wear is deepest, clockwise from 12 o'clock
};

/// Readings round the bore at one depth from the near face, at equal clock steps from 12 o'clock: radii from
/// the target axis over the whole turn, or two-point diameters over half a turn.
struct WornStation {
    Length depth;
    std::vector<Length> readings;
};

struct WornRadii {
    std::vector<WornStation> stations;
};

struct WornDiameters {
    std::vector<WornStation> stations;
    Length offset;
    Angle offset_clock;
};

/// The worn surface in the way the job gives it.
using Worn = std::variant<WornDiameter, WornRadii, WornDiameters>;

} // namespace ringfill
