#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include <ringfill/heat/boss.hpp>

namespace ringfill {

/// A lump of metal that takes in heat and loses it to air, to what stands round it and into the machine:
/// m c(T) dT/dt = P − K (T − T_amb) − ε A σ (T⁴ − T_amb⁴).
struct ThermalLump {
    Mass mass;
    HotMetal metal;
    Conductance conductance; ///< K = h_c A + G
    Area emitting;           ///< ε A
    Temperature ambient;
};

/// Where a lump stands after some time.
struct ThermalState {
    Temperature temperature;
    Energy lost; ///< since it was set to 0
    Time time;
    std::int64_t evaluations = 0; ///< of the right-hand side on the way there: what it cost to find
};

/// Heat lost at a temperature, K (T − T_amb) + ε A σ (T⁴ − T_amb⁴) [W]; negative below the ambient.
Power heat_loss(const ThermalLump& lump, Temperature at);

/// Heat taken up from one temperature to another, m ∫ c dT [J], by Gauss-Kronrod quadrature.
Energy heat_content(const ThermalLump& lump, Temperature from, Temperature to);

/// The state after a time under constant power. Time 0 or more.
ThermalState after(const ThermalLump& lump, ThermalState state, Power power, Time time);

/// The states on the way there, at each part of the time but the last: one integration for all of them, the
/// same numbers as after() gives. Its evaluations are those of the last state.
std::vector<ThermalState> on_the_way(const ThermalLump& lump, const ThermalState& state, Power power,
                                     Time time, int parts);

/// The state when a temperature is reached under constant power: at once when it stands there already,
/// nothing when it never is or not within ten days.
std::optional<ThermalState> when_at(const ThermalLump& lump, ThermalState state, Power power,
                                    Temperature target);

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
