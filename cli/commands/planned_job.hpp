#pragma once

#include <ringfill/plan/plan.hpp>

#include "../options.hpp"

namespace ringfill::cli {

/// A job, its plan, and the sources of the tables and families it was planned with.
struct PlannedJob {
    Job job;
    Plan plan;
    Bibliography sources;
};

/// Reads the job and the tables a request names and plans it. Throws Faulty with every fault placed in its
/// file.
PlannedJob plan_with_job(const Request& request);

/// The plan alone, likewise.
Plan planned_job(const Request& request);

} // namespace ringfill::cli
