#pragma once

#include <ringfill/job/procedure.hpp>
#include <ringfill/material/family.hpp>
#include <ringfill/table/gases.hpp>

namespace ringfill {

/// Shielding gas lost to purging and leaks on top of what flows: 5 % [common practice, no source].
inline constexpr double purge_and_leaks = 0.05;

/// Flow for cored wire in any gas, per millimetre of wire: 15 L/min [common practice, no
/// source].
inline constexpr double cored_flow_L_min_per_mm = 15;

/// Flow through the cup of a tungsten torch: 10 L/min [common practice, no source].
inline constexpr double tungsten_flow_L_min = 10;

/// The procedure's gas flow, or the usual one for its wire and gas [m³/s].
VolumeFlow gas_flow(const Procedure& procedure, const Filler& filler, const Gas& gas);

/// Shielding gas of some arc time and starts, flow × (t_arc + starts × (before + after)) × 1.05
/// [m³ at 15 °C and 1 atm].
Volume gas_volume(VolumeFlow flow, Time arc, double starts, Time before, Time after);

} // namespace ringfill
