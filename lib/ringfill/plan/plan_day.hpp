#pragma once

#include <optional>
#include <vector>

#include <ringfill/day/schedule.hpp>
#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// Lays out the day of a planned job, and says in the plan's notes why when there is none.
void plan_day(Plan& plan, const Job& job, const Shop& shop);

/// Figures of the day with their workings: what it takes bore by bore and in turns, the share of the arc.
std::vector<Working> day_working(const DayPlan& day);

} // namespace ringfill
