#pragma once

#include <string>
#include <vector>

#include <ringfill/caution/planned_work.hpp>
#include <ringfill/day/day_plan.hpp>
#include <ringfill/document/assumed.hpp>
#include <ringfill/material/shop.hpp>

namespace ringfill {

/// What is out of the usual in a plan, and what is no part of it, in sentences.
std::vector<std::string> notes(const PlannedWork& work, const PlannedDay& day);

/// The values that a plan counts with because the job leaves them out.
std::vector<Assumed> assumed(const PlannedWork& work, const std::vector<StepTime>& times);

} // namespace ringfill
