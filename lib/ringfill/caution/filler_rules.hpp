#pragma once

#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/job/procedure.hpp>
#include <ringfill/job/worn_bore.hpp>

namespace ringfill {

/// A caution when filler and base metal are of different families: that needs more than this plan knows.
std::vector<Caution> filler_cautions(const WornBore& bore, const Procedure& procedure);

} // namespace ringfill
