#pragma once

#include <optional>

#include <ringfill/job/worn_bore.hpp>
#include <ringfill/survey/worn_surface.hpp>

namespace ringfill {

/// The bore made ready for welding, and what shall be welded into it (sections 2 and 3 of the computation).
struct Build {
    bool skimmed = true;
    Length skim_radius; ///< r_s; welded on the surface as it is: r_max
    Volume skim_volume; ///< metal the skim takes off; 0 without a skim
    Length mean_radius; ///< the radius metal is counted from: r_s, or without a skim r̄ = √(V_worn/(π L))
    Length finish_radius;  ///< r_f
    Length weld_to_radius; ///< r_t = r_f − s
    Length thickness;      ///< H = r_s − r_t
    Length welded_length;  ///< L_w = L + 2 o
    Volume ring_volume;    ///< V_ring, between mean_radius and r_t over L_w
    Length finished_weld; ///< left on the thinnest side after boring: r_s − r_f, without a skim r_min − r_f
    Angle finished_weld_clock;  ///< where that is, without a skim
    std::optional<Length> wall; ///< R_boss − r_s
};

/// The least finished weld per side that keeps the tool out of the fused line: 1.5 mm [common practice, no
/// source].
inline const Length least_finished_weld = millimetres(1.5);

/// The least wall after the skim, max(6 mm, r_f/5) [m; common practice, no source].
Length least_wall(Length finish_radius);

/// Works out skim, wall and ring of a bore. Throws Faulty (Origin::job) when its readings lie too far apart
/// for a curve, when it cleans up at its finish size without welding (r_s ≤ r_f), or when the skim leaves no
/// wall.
Build skim_and_size(const WornBore& bore, const Survey& survey);

} // namespace ringfill
