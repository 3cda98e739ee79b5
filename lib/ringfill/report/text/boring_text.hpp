#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

/// How each bore is cut, bore by bore: speed, feed, every cut with its diameters, limits, gauge readings,
/// time and edges. Each figure is for one bore. Under 80 columns, in the plan's units.
std::string boring_text(const Plan& plan, const Style& style);

} // namespace ringfill
