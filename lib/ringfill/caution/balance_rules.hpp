#pragma once

#include <string>
#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// Over this Biot number the wall is not at one temperature [lumped capacity, heat-transfer textbooks].
inline constexpr double thin_biot = 0.1;

/// What the heat balance of a bore warns of: a heater that cannot reach or hold a temperature, with the power
/// needed and given, and a boss that does not cool to where the work may go on.
std::vector<Caution> balance_cautions(const WornBore& bore, const HeatBalance& balance, UnitSystem units);

/// What else its figures need said: a wall that is not at one temperature.
std::vector<std::string> balance_notes(const std::string& bore, const HeatBalance& balance, UnitSystem units);

} // namespace ringfill
