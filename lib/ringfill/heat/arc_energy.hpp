#pragma once

#include <optional>
#include <string_view>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// Thermal efficiency k of an arc process by its ISO 4063 number: 1.0 submerged arc (121), 0.8 stick
/// electrode (111), self-shielded cored wire (114), MIG (131), MAG (135), gas-shielded cored wire (136, 137,
/// 138), 0.6 TIG (141) and plasma (15) [EN 1011-1:2009, table 1; restated in a training text]. Nothing for
/// another process.
std::optional<double> thermal_efficiency(std::string_view iso_4063);

/// Arc energy E = U I / v [J/m]. Travel over 0.
EnergyPerLength arc_energy(Voltage voltage, Current current, Speed travel);

/// Heat input Q = k E [J/m].
EnergyPerLength heat_input(double thermal_efficiency, EnergyPerLength arc_energy);

/// A travel faster than set takes heat out of the weld; under this share of the heat input at the travel as
/// set fusion is in doubt [EN ISO 15614-1:2017+A1:2019, 8.4.7: down by a quarter at most; read in a
/// reproduction].
inline constexpr double least_share_for_fusion = 0.75;

} // namespace ringfill
