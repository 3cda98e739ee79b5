#pragma once

#include <vector>

#include <ringfill/survey/skim.hpp>
#include <ringfill/weld/face_pad.hpp>
#include <ringfill/weld/groove_fill.hpp>
#include <ringfill/weld/passes.hpp>

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

/// Adds up the layers, faces and grooves of one bore. Metal kept and its share are of the bore's own layers
/// only and are 0 or less when boring takes all of it, which can be only without a skim.
Metal metal(const WornBore& bore, const Build& build, const std::vector<Layer>& layers,
            const std::vector<FacePad>& faces, const std::vector<GrooveFill>& grooves,
            const Deposition& deposition);

/// Adds the starts after breaks of the arc, with the wire trimmed off before them.
void add_breaks(Metal& metal, int breaks, const Deposition& deposition);

/// Wire that lays a mass: the mass over the efficiency, and the trim of each start; of electrodes and rods
/// whole pieces [kg].
Mass wire_for(Mass laid, int starts, const Deposition& deposition);

} // namespace ringfill
