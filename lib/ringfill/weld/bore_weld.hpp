#pragma once

#include <string>
#include <vector>

#include <ringfill/weld/faces_and_grooves.hpp>
#include <ringfill/weld/layers.hpp>
#include <ringfill/weld/settings.hpp>

namespace ringfill {

/// What is laid in one bore, ring by ring, on its faces and in its grooves (sections 1 to 7).
struct BoreWeld {
    std::string name;
    std::string procedure;
    std::string filler;
    std::string base;
    int count = 1;
    TorchPath torch_path = TorchPath::ring;
    Speed travel_set; ///< as the job gives it
    Survey survey;
    Build build;
    Deposition deposition;
    Bead bead; ///< as laid
    Layering layering;
    std::vector<Layer> layers;
    std::vector<FacePad> faces;
    std::vector<GrooveFill> grooves;
};

/// Lays a bore out. Throws Faulty (Origin::job): readings too far apart for a curve, layers that close the
/// bore, a bead far too small for it, a face without room, too many electrodes or rods.
BoreWeld weld_bore(const WornBore& bore, const Settings& settings);

} // namespace ringfill
