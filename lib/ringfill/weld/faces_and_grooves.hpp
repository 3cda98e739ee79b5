#pragma once

#include <optional>
#include <vector>

#include <ringfill/job/worn_bore.hpp>
#include <ringfill/weld/bead.hpp>

namespace ringfill {

/// A worn boss face as it is built up: concentric rings, all layers alike (section 7).
struct FacePad : Pass {
    int layers = 0;
    int rings = 0;       ///< a layer
    Bead bead;           ///< as laid
    Length extra_build;  ///< built over what was asked, because the travel could not be faster
    Length first_radius; ///< of the innermost ring
    Length last_radius;  ///< of the outermost ring

    Turning first_torch() const { return torch_speed(bead.travel, first_radius); }
    Turning last_torch() const { return torch_speed(bead.travel, last_radius); }
};

/// Lays a pad of the face's build and the machining stock, from inner to outer diameter and past both by the
/// overhang. Nothing when the overhang reaches past the middle, D_i/2 ≤ o, or the bead is far too small for
/// the pad.
/// @param unscaled the bead at κ = 1. @param travel_limit v_max, at least v₀.
std::optional<FacePad> lay_face(const Face& face, Length stock, Length overhang, const Bead& unscaled,
                                Speed travel_limit, const Deposition& deposition);

/// A ring groove as it is filled, before the bore itself and with the bead unscaled (section 7).
struct GrooveFill : Pass {
    Volume volume; ///< 0: the skim takes the groove away, nothing to fill
    Speed travel;
    Turning torch; ///< on the floor of the groove

    bool is_filled() const { return volume > Volume(); }
};

/// Fills a groove down to the skimmed bore: V = π (r_g² − r_s²) × width.
/// @param bore_radius r_s, or without a skim the mean radius r̄. @param unscaled the bead at κ = 1.
GrooveFill fill_groove(const Groove& groove, Length bore_radius, const Bead& unscaled,
                       const Deposition& deposition);

} // namespace ringfill
