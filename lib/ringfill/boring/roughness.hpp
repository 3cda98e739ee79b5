#pragma once

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// Roughness that feed and nose radius leave by geometry alone; a real surface is rougher.
struct Roughness {
    Length peak_to_valley; ///< Rt = f²/(8 r)
    Length mean;           ///< Ra ≈ f²/(32 r)
};

/// The theoretical roughness of a turned or bored surface; holds while the feed is well under the nose
/// radius [machine shop books].
Roughness roughness(Length feed, Length nose_radius);

} // namespace ringfill
