#pragma once

#include <ringfill/plan/plan.hpp>
#include <ringfill/plan/settings.hpp>

namespace ringfill {

/// Plans one bore with its procedure's settings. Throws Faulty (Origin::job) with the faults of this bore.
BorePlan plan_bore(const WornBore& bore, const Settings& settings);

} // namespace ringfill
