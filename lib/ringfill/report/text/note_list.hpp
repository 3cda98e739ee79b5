#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/style.hpp>

namespace ringfill {

/// The notes of a plan under their heading.
std::string note_list(const Plan& plan, const Style& style);

} // namespace ringfill
