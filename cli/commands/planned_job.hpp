#pragma once

#include <ringfill/plan/plan.hpp>

#include "../options.hpp"

namespace ringfill::cli {

/// Reads the job and the tables a request names and plans it. Throws Faulty with every fault placed in its
/// file.
Plan planned_job(const Request& request);

} // namespace ringfill::cli
