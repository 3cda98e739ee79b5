#pragma once

#include <vector>

#include <ringfill/boring/bore_plan.hpp>
#include <ringfill/table/standing_times.hpp>

namespace ringfill {

/// Standing times of handling and rigging that the plan of a job takes, each once where it is used.
std::vector<Assumed> assumed_times(const std::vector<Settings>& settings, const std::vector<BorePlan>& bores,
                                   const std::vector<StepTime>& times);

} // namespace ringfill
