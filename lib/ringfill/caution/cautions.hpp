#pragma once

#include <string>
#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/caution/fire_watch.hpp>
#include <ringfill/caution/judged.hpp>
#include <ringfill/material/shop.hpp>

namespace ringfill {

/// A job whose work is planned, bore by bore in the order of the job.
struct PlannedWork {
    const Job& job;
    const std::vector<Settings>& settings; ///< of the job's procedures, in their order
    const std::vector<GivenBore>& given;
    const std::vector<BorePlan>& bores;
    const FireWatch& fire_watch;
};

WorkFacts work_facts(const PlannedWork& work, const Fuels& fuels);

/// Every caution of the work: those that apply, then those the job leaves open; by time of the work.
std::vector<Caution> cautions(const PlannedWork& work, const Shop& shop);

/// The sources that some cautions of a job name.
Bibliography cited(const std::vector<Caution>& cautions, const Job& job, const Shop& shop);

} // namespace ringfill
