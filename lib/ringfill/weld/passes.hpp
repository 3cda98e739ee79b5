#pragma once

#include <vector>

#include <ringfill/survey/skim.hpp>
#include <ringfill/weld/layers.hpp>
#include <ringfill/weld/path.hpp>

namespace ringfill {

/// One layer as it is laid.
struct Layer {
    Length radius_before;
    Length radius_after;
    int rings = 0;
    Length path;
    Mass laid;
    Time arc;
    Turning torch;
};

/// The layers of a bore, one by one, from the mean radius (r_s, or r̄ without a skim) inwards with the bead as
/// laid. Throws Faulty (Origin::job) when the ring closes on the way.
std::vector<Layer> lay(const WornBore& bore, const Build& build, const Bead& as_laid,
                       const Layering& layering, TorchPath path, const Deposition& deposition);

} // namespace ringfill
