#pragma once

#include <ringfill/document/value.hpp>
#include <ringfill/day/day_plan.hpp>

namespace ringfill {

/// The day of a plan: how long it takes in turns and bore after bore, and every step by the clock.
Value day_object(const DayPlan& day);

} // namespace ringfill
