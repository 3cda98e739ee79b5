#pragma once

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/draw/markup.hpp>

namespace ringfill {

/// The fire watch by the clock, with columns to write in when it began and ended.
Markup sheet_fire_watch(const Plan& plan);

} // namespace ringfill
