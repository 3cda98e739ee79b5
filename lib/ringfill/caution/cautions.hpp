#pragma once

#include <string>
#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/caution/judged.hpp>
#include <ringfill/caution/planned_work.hpp>
#include <ringfill/material/shop.hpp>

namespace ringfill {

WorkFacts work_facts(const PlannedWork& work, const Fuels& fuels);

/// Every caution of the work: those that apply, then those the job leaves open; by time of the work.
std::vector<Caution> cautions(const PlannedWork& work, const Shop& shop);

/// The sources that some cautions of a job name.
Bibliography cited(const std::vector<Caution>& cautions, const Job& job, const Shop& shop);

} // namespace ringfill
