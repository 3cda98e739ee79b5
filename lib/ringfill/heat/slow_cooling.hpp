#pragma once

#include <optional>

#include <ringfill/heat/thermal_history.hpp>

namespace ringfill {

/// How a lump comes down that may not cool faster than a rate.
struct SlowCooling {
    Time time;
    Temperature free_from; ///< down to here it is kept to the rate, below it cools by itself
    Time held;             ///< until it is there
    Energy heat;           ///< what keeps it to the rate without a blanket: its losses less what it gives up
};

/// Cools a lump without power from one temperature to a lower one at dT/dt = −min(rate, natural rate), the
/// natural rate being loss/(m c) and falling with the temperature. Nothing when it never gets there. Below
/// `to` already: no time.
/// @param rate_K_s over 0.
std::optional<SlowCooling> cool_slowly(const ThermalLump& lump, Temperature from, Temperature to,
                                       double rate_K_s);

} // namespace ringfill
