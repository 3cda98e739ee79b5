#pragma once

#include <optional>
#include <utility>

#include <ringfill/document/document.hpp>
#include <ringfill/plan/plan.hpp>

#include "../options.hpp"

namespace ringfill::cli {

/// A job, its plan, and the sources of the tables and families it was planned with.
struct PlannedJob {
    Job job;
    Plan plan;
    Bibliography sources;
};

/// Which material families are read: those the job names, or all, so that a broken one is found.
enum class FamiliesRead { named, all };

/// Reads the job and the tables a request names and plans it. Throws Faulty with every fault placed in its
/// file.
PlannedJob plan_with_job(const Request& request, FamiliesRead read = FamiliesRead::named);

/// Reads a job from its document, in the units asked for, and plans it. Throws likewise, also for doubts
/// where the request is strict.
std::pair<Job, Plan> plan_of(const Document& document, const Request& request, const Shop& shop,
                             const Progress& progress, const RunBlocks& run_blocks);

/// The plan alone of a request.
Plan planned_job(const Request& request, FamiliesRead read = FamiliesRead::named);

} // namespace ringfill::cli
