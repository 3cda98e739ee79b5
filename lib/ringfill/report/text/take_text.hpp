#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

/// The plan as a person reads it before driving: what to load first, then the bores, the reasons, cautions,
/// notes and assumed values. Under 80 columns, in the plan's units.
std::string take_text(const Plan& plan, const Style& style);

} // namespace ringfill
