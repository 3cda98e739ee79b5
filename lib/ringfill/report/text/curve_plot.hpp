#pragma once

#include <string>

#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// The temperature of a boss over the time in plain characters: # the boss, - the two limits of a ring, with
/// their temperatures and the hours below. Empty when there is no stretch of time.
std::string curve_plot(const BossRun& one, UnitSystem units);

} // namespace ringfill
