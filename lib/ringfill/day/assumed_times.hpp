#pragma once

#include <vector>

#include <ringfill/boring/bore_plan.hpp>
#include <ringfill/job/job.hpp>
#include <ringfill/table/standing_times.hpp>

namespace ringfill {

/// Times of handling, rigging and soaking that the plan of a job takes, each once where it is used.
std::vector<Assumed> assumed_times(const Job& job, const std::vector<Settings>& settings,
                                   const std::vector<BorePlan>& bores, const std::vector<StepTime>& times);

} // namespace ringfill
