#pragma once

#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/job/procedure.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/units/show.hpp>
#include <ringfill/weld/bead.hpp>

namespace ringfill {

/// The largest bead section that holds overhead, 20 mm² [common practice, no source].
inline const Area largest_overhead_bead = in_si<Area>(20e-6);

/// Cautions of a bore with a horizontal axis, where every turn of the torch passes overhead: a bead too large
/// to hold there, and spray transfer.
std::vector<Caution> position_cautions(const WornBore& bore, const Procedure& procedure, const Bead& as_laid,
                                       UnitSystem units);

} // namespace ringfill
