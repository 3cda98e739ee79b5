#pragma once

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/draw/markup.hpp>

namespace ringfill {

/// The head of the sheet: what it is and is not, the job, bores, wire, arc, and how hot each bore must be.
Markup sheet_head(const Plan& plan);

/// What to take, with a box to tick a line.
Markup sheet_take(const Plan& plan);

/// The day by the clock, in short.
Markup sheet_day(const Plan& plan);

} // namespace ringfill
