#pragma once

#include <vector>

#include <ringfill/job/worn.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// The outline at one depth: radii from the target axis at equal clock steps from 12 o'clock.
struct Station {
    Length depth;
    std::vector<Length> radii;
};

/// Stations of radii, as read.
std::vector<Station> stations_of(const WornRadii& worn);

/// Stations of two-point diameters: half of each reading at its clock position and at the one opposite, then
/// moved by the offset, which is exact for a round outline.
std::vector<Station> stations_of(const WornDiameters& worn);

} // namespace ringfill
