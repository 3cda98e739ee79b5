#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// Every cut, facing and standing time of a plan as comma-separated values, one line each, in the sequence of
/// the work. Each figure is for one bore.
std::string boring_csv(const Plan& plan);

} // namespace ringfill
