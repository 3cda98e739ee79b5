#pragma once

#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/units/show.hpp>
#include <ringfill/weld/layers.hpp>

namespace ringfill {

/// The least stock that must stay over the deepest valley between beads, 0.5 mm [common practice, no source].
inline const Length least_clean_up = millimetres(0.5);

/// Extra stock per side that is worth a caution, over 1 mm [common practice, no source].
inline const Length much_extra_stock = millimetres(1);

/// Wire feed at which the layers would come out even at the fastest travel, f κ*² v_max/v₀ [m/s].
Speed even_wire_feed(const Deposition& deposition, const Layering& layering, const Bead& as_laid);

/// Metal laid in a second at which they would, of electrodes and rods [kg/s].
MassFlow even_rate(const Deposition& deposition, const Layering& layering, const Bead& as_laid);

/// Cautions that follow from the layers of a bore: valleys that the boring may not clean up, and much extra
/// stock because the travel could not be faster.
std::vector<Caution> weld_cautions(const WornBore& bore, const Build& build, const Bead& as_laid,
                                   const Layering& layering, const Deposition& deposition, UnitSystem units);

} // namespace ringfill
