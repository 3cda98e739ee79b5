#pragma once

#include <optional>
#include <vector>

#include <ringfill/plan/plan.hpp>
#include <ringfill/plan/uses.hpp>

namespace ringfill {

/// The rule of the fire watch; a rule set that the table does not have is noted.
std::optional<FireWatch> fire_watch_of(const Job& job, const Shop& shop, std::vector<Fault>& faults);

/// How long a heater slows the cooling of a bore after its last ring and hold; 0: none does.
Time slowed_by_heater(const HeatBalance& balance);

/// Lays the watch over the day: from the first flame of each piece to its last ring or hold, and on while a
/// flame slows its cooling.
void plan_fire_watch(Plan& plan);

/// Adds what the table of cautions says of the job, puts all cautions in order and gathers their sources.
void judge_by_table(Plan& plan, const Job& job, const Shop& shop, const SettingsByProcedure& settings);

std::vector<Working> fire_watch_working(const FireWatch& watch);

} // namespace ringfill
