#pragma once

#include <string>
#include <vector>

#include <ringfill/weld/faces_and_grooves.hpp>
#include <ringfill/weld/layers.hpp>
#include <ringfill/weld/settings.hpp>

namespace ringfill {

/// Wire cut off before each start, 0.1 m [common practice, no source].
inline constexpr double trim_a_start = 0.1; // m

/// Metal, wire and time of one bore with its faces and grooves (section 6).
struct Metal {
    Mass laid;
    Time arc;
    int breaks = 0; ///< of the arc, for a rest or a reheat
    int starts = 0; ///< bore layers, face layers, one a groove, one a break; or an electrode, and a break
    Mass wire;      ///< laid mass over efficiency, and the trims; of electrodes and rods whole pieces
    int pieces = 0; ///< electrodes or rods, rounded up; 0 of wire
    Mass kept;      ///< of the bore's own layers, after boring
    double kept_share = 0; ///< of the mass of the bore's own layers
};

/// What is laid in one bore, ring by ring, on its faces and in its grooves (sections 1 to 7).
struct BoreWeld {
    std::string name;
    std::string procedure;
    std::string filler;
    std::string base;
    int count = 1;
    TorchPath torch_path = TorchPath::ring;
    Speed travel_set; ///< as the job gives it
    Deposition deposition;
    Survey survey;
    Build build = {};
    Bead bead = {}; ///< as laid
    Layering layering = {};
    std::vector<Layer> layers = {};
    std::vector<FacePad> faces = {};
    std::vector<GrooveFill> grooves = {};
    Metal metal = {};
};

/// Lays a bore out, its metal without a break of the arc. Throws Faulty (Origin::job): layers that close the
/// bore, a bead far too small for it, a face without room, too many electrodes or rods.
BoreWeld weld_bore(const WornBore& bore, const Settings& settings, const Survey& survey, const Build& build);

/// The layers of a bore, one by one, from the mean radius (r_s, or r̄ without a skim) inwards with the bead as
/// laid. Throws Faulty (Origin::job) when the ring closes on the way.
std::vector<Layer> lay(const WornBore& bore, const BoreWeld& weld);

/// The faults of a torch that does not go into a bore when it is built up (2 r_end under its smallest bore),
/// or does not reach the far end of the weld (L_w over its reach). Each names both figures.
std::vector<Fault> torch_faults(const BoreWeld& weld, const Torch& torch, UnitSystem units);

/// Adds up the layers, faces and grooves of one bore, with the wire trimmed off before each start. Metal kept
/// and its share are of the bore's own layers only and are 0 or less when boring takes all of it, which can
/// be only without a skim.
Metal metal(const WornBore& bore, const BoreWeld& weld);

/// The metal again with breaks of the arc, for a rest or a reheat, each with a start after it and its trim.
Metal with_breaks(Metal metal, int breaks, const Deposition& deposition);

/// Wire that lays a mass: the mass over the efficiency, and the trim of each start; of electrodes and rods
/// whole pieces [kg].
Mass wire_for(Mass laid, int starts, const Deposition& deposition);

} // namespace ringfill
