#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

/// What can hurt on the job: the fire watch by the clock, the cautions with their sources, and how each
/// source is known.
std::string cautions_text(const Plan& plan, const Style& style);

} // namespace ringfill
