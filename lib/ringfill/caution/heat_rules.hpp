#pragma once

#include <string>
#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/job/workshop.hpp>
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

/// What else can go wrong with its preheat: methods that ask for more than what rules, an approved procedure
/// that goes further than a document, the family or the metal allows, knowledge that is missing.
std::vector<Caution> preheat_cautions(const WornBore& bore, const Procedure& procedure, const BoreHeat& heat,
                                      const Build& build, UnitSystem units);

/// Its part on the approved procedure.
void judge_overruled(CautionList& cautions, const BoreHeat& heat, UnitSystem units);

/// What the heat balance of a bore warns of: a heater that cannot reach or hold a temperature, with the power
/// needed and given, a boss that does not cool to where the work may go on, and one so light that a ring
/// takes it far over its maximum.
std::vector<Caution> balance_cautions(const WornBore& bore, const HeatBalance& balance, UnitSystem units);

/// Over this Biot number the wall is not at one temperature [lumped capacity, heat-transfer textbooks].
inline constexpr double thin_biot = 0.1;

/// What else its figures need said: a wall that is not at one temperature.
std::vector<std::string> balance_notes(const std::string& bore, const HeatBalance& balance, UnitSystem units);

/// What cold and wet ask for before the first arc [AWS D1.1: 0 °F (−18 °C) at the weld ends the work, below
/// 32 °F (0 °C) warm to 70 °F (20 °C); from memory; 5 °C: common practice, no source].
/// @param in_doubt bores whose metal must be identified first, and are neither warmed nor dried with a flame.
/// @param all_in_doubt there is no other bore.
std::vector<Caution> cold_cautions(const Site& site, UnitSystem units,
                                   const std::vector<std::string>& in_doubt = {}, bool all_in_doubt = false);

} // namespace ringfill
