#pragma once

#include <vector>

#include <ringfill/caution/fire_watch.hpp>

namespace ringfill {

/// A job whose work is planned, bore by bore in the order of the job: what cautions, take, quote and notes
/// are made from.
struct PlannedWork {
    const Job& job;
    const std::vector<Settings>& settings; ///< of the job's procedures, in their order
    const std::vector<GivenBore>& given;
    const std::vector<BorePlan>& bores;
    const FireWatch& fire_watch;
};

} // namespace ringfill
