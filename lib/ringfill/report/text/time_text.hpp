#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

/// The heat of one bore step by step: what it takes in all, then the warm-up, each layer, each rest and
/// reheat with the ring it comes after, the hold, and the cooling to where roughing and finishing may begin.
/// Where two runs stand at the ends of what may be, both are told. A long list keeps its two ends. Empty
/// without a balance.
/// @param with_curve then the curve of the run that asks for the longest waits.
std::string time_text(const BorePlan& bore, UnitSystem units, bool with_curve = false);

/// The temperature of a boss over the time in plain characters: # the boss, - the two limits of a ring, with
/// their temperatures and the hours below. Empty when there is no stretch of time.
std::string curve_plot(const BossRun& boss_run, UnitSystem units);

} // namespace ringfill
