#pragma once

#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// What must be said first of a bore's heat, before anything else in every view: metal that has to be
/// identified, a minimum over its maximum, and no figure at all.
std::vector<Caution> heat_stops(const WornBore& bore, const BoreHeat& heat, UnitSystem units);

/// What else can go wrong with its preheat: methods that ask for more than what rules, knowledge that is
/// missing.
std::vector<Caution> preheat_cautions(const WornBore& bore, const Procedure& procedure, const BoreHeat& heat,
                                      const Build& build, UnitSystem units);

} // namespace ringfill
