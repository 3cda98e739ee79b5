#pragma once

#include <ringfill/job/worn_bore.hpp>
#include <ringfill/weld/bead.hpp>

namespace ringfill {

/// A ring groove as it is filled, before the bore itself and with the bead unscaled (section 7).
struct GrooveFill {
    Volume volume; ///< 0: the skim takes the groove away, nothing to fill
    Length path;
    Mass laid;
    Time arc;
    Speed travel;
    Turning torch; ///< on the floor of the groove
};

/// Fills a groove down to the skimmed bore: V = π (r_g² − r_s²) × width.
/// @param bore_radius r_s, or without a skim the mean radius r̄. @param unscaled the bead at κ = 1.
GrooveFill fill_groove(const Groove& groove, Length bore_radius, const Bead& unscaled,
                       const Deposition& deposition);

} // namespace ringfill
