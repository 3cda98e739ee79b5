#pragma once

#include <ringfill/plan/plan.hpp>
#include <ringfill/plan/settings.hpp>

namespace ringfill {

/// Plans one bore with its procedure's settings, all but its heat. Throws Faulty (Origin::job) with the
/// faults of this bore.
BorePlan plan_bore(const WornBore& bore, const Settings& settings);

/// Plans the heat of a bore that is planned otherwise. Throws Faulty as bore_heat() does.
void plan_heat(BorePlan& plan, const WornBore& bore, const Settings& settings, const Site& site,
               const Registry& registry, const Base& base);

} // namespace ringfill
