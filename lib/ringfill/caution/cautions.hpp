#pragma once

#include <string>
#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/caution/fire_watch.hpp>
#include <ringfill/caution/judged.hpp>
#include <ringfill/table/cautions.hpp>
#include <ringfill/table/cutting.hpp>
#include <ringfill/table/fuels.hpp>

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

/// What the cautions are judged by, of the shop.
struct CautionTables {
    const CautionTable& cautions;
    const Cutting& cutting;
    const Fuels& fuels;
    const Registry& registry;
};

/// Every caution of the work: those that apply, then those the job leaves open; by time of the work.
std::vector<Caution> cautions(const PlannedWork& work, const CautionTables& tables);

/// Which cautions a table of the user's replaces, in sentences.
std::vector<std::string> caution_notes(const CautionTable& table);

/// The sources that some cautions of a job name.
Bibliography cited(const std::vector<Caution>& cautions, const Job& job, const CautionTables& tables);

} // namespace ringfill
