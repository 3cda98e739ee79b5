#pragma once

#include <string>
#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// What cold and wet ask for before the first arc [AWS D1.1: 0 °F (−18 °C) at the weld ends the work, below
/// 32 °F (0 °C) warm to 70 °F (20 °C); from memory; 5 °C: common practice, no source].
/// @param in_doubt bores whose metal must be identified first, and are neither warmed nor dried with a flame.
/// @param all_in_doubt there is no other bore.
std::vector<Caution> cold_cautions(const Site& site, UnitSystem units,
                                   const std::vector<std::string>& in_doubt = {}, bool all_in_doubt = false);

} // namespace ringfill
