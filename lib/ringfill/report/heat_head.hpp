#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/style.hpp>

namespace ringfill {

/// The lines on heat at the head of every view: first what stops the work, then the approved procedures, then
/// for each bore how hot it must be and may get.
std::string heat_head(const Plan& plan, const Style& style);

/// "at least 260 °C, a ring begins at 350 °C at most", "none, dry and hand-warm; …", or why there is no
/// figure.
std::string heat_limits(const BoreHeat& heat, UnitSystem units);

} // namespace ringfill
