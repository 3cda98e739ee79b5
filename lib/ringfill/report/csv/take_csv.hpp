#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// What to take as comma-separated values, one line a need, amounts in the line's own unit.
std::string take_csv(const Plan& plan);

} // namespace ringfill
