#pragma once

#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/survey/skim.hpp>
#include <ringfill/units/show.hpp>
#include <ringfill/weld/layers.hpp>

namespace ringfill {

/// The faults of a torch that does not go into a bore when it is built up (2 r_end under its smallest bore),
/// or does not reach the far end of the weld (L_w over its reach). Each names both figures.
std::vector<Fault> torch_faults(const WornBore& bore, const Torch& torch, const Build& build,
                                const Layering& layering, UnitSystem units);

} // namespace ringfill
