#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

/// How every figure of a plan was reached, to be checked by hand: the figure, its formula, what goes into it
/// with units, and the source. In the trade's metric units, as the result file writes them. Under 80 columns.
std::string working_text(const Plan& plan, const Style& style);

} // namespace ringfill
