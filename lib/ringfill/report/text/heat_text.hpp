#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

/// How hot each bore must be and may get, in sentences: the figure and who asks for it, lower ones, those
/// that are not usable and why, where to measure and with what, the heat put in.
std::string heat_text(const Plan& plan, const Style& style);

} // namespace ringfill
