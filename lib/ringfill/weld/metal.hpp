#pragma once

#include <ringfill/weld/bore_weld.hpp>

namespace ringfill {

/// Wire cut off before each start, 0.1 m [common practice, no source].
inline constexpr double trim_a_start = 0.1; // m

/// Metal, wire and time of one bore with its faces and grooves (section 6).
struct Metal {
    Mass laid;
    Time arc;
    int breaks = 0; ///< of the arc, for a stop or a reheat
    int starts = 0; ///< bore layers, face layers, one a groove, one a break; or an electrode, and a break
    Mass wire;      ///< laid mass over efficiency, and the trims; of electrodes and rods whole pieces
    int pieces = 0; ///< electrodes or rods, rounded up; 0 of wire
    Mass kept;      ///< of the bore's own layers, after boring
    double kept_share = 0; ///< of the mass of the bore's own layers
};

/// Adds up the layers, faces and grooves of one bore, with a start after each break of the arc and the wire
/// trimmed off before it. Metal kept and its share are of the bore's own layers only and are 0 or less when
/// boring takes all of it, which can be only without a skim.
/// @param breaks of the arc, for a stop or a reheat.
Metal metal(const WornBore& bore, const BoreWeld& weld, int breaks);

/// Wire that lays a mass: the mass over the efficiency, and the trim of each start; of electrodes and rods
/// whole pieces [kg].
Mass wire_for(Mass laid, int starts, const Deposition& deposition);

} // namespace ringfill
