#pragma once

#include <vector>

#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// How every figure of a bore's heat was reached, by paths under the bore.
std::vector<Working> heat_working(const WornBore& bore, const Build& build, Speed travel,
                                  const std::vector<FacePad>& faces, const std::vector<GrooveFill>& grooves,
                                  const BoreHeat& heat);

} // namespace ringfill
