#pragma once

#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// How a layer of austenitic, nickel, manganese or bronze metal on hardenable steel is qualified as a rule,
/// where one minimum and one maximum contradict each other; a sentence after a space, or nothing for other
/// fillers [common practice, no source].
std::string layer_by_layer(const BoreHeat& heat);

/// Why metal that an approved procedure heats against its rules is not: "manganese steel is not heated".
/// Empty where it does not.
std::string never_heated_words(const BoreHeat& heat, UnitSystem units);

/// What must be said first of a bore's heat, before anything else in every view: metal that has to be
/// identified, metal that an approved procedure heats against its rules, a minimum over its maximum, and no
/// figure at all.
std::vector<Caution> heat_stops(const WornBore& bore, const BoreHeat& heat, UnitSystem units);

/// Where an approved procedure goes further than a document, the family or the metal allows.
std::vector<Caution> overruled_cautions(const WornBore& bore, const BoreHeat& heat, UnitSystem units);

/// What else can go wrong with its preheat: methods that ask for more than what rules, knowledge that is
/// missing.
std::vector<Caution> preheat_cautions(const WornBore& bore, const Procedure& procedure, const BoreHeat& heat,
                                      const Build& build, UnitSystem units);

} // namespace ringfill
