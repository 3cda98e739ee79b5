#pragma once

#include <ringfill/plan/plan.hpp>
#include <ringfill/plan/settings.hpp>

namespace ringfill {

/// Adds to a planned bore how filler and base metal go together: the rule on whether they do, the fillers of
/// the buffer that it asks for, dilution by layer, the ferrite of stainless layers, and what share of the
/// filler is usually deposited.
void plan_metals(BorePlan& plan, const WornBore& bore, const Settings& settings, const Shop& shop,
                 const Base& base);

} // namespace ringfill
