#pragma once

#include <optional>
#include <string_view>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// Thermal efficiency k of a process as the tables name it, 0.8 stick electrode (ISO 4063: 111),
/// self-shielded cored wire (114), MIG and MAG (131, 135), gas-shielded and metal-cored wire (136, 138), 0.6
/// TIG (141) [EN 1011-1:2009, table 1; restated in a training text]. 0 for a torch, which is no arc.
double thermal_efficiency(std::string_view process);

/// Heat input Q = k U I/v [J/m]. Travel over 0.
EnergyPerLength heat_input(double thermal_efficiency, Voltage voltage, Current current, Speed travel);

/// A travel faster than set takes heat out of the weld; under this share of the heat input at the travel as
/// set fusion is in doubt [EN ISO 15614-1:2017+A1:2019, 8.4.7: down by a quarter at most; read in a
/// reproduction].
inline constexpr double least_share_for_fusion = 0.75;

/// How long a run on plate takes from 800 to 500 °C, as information: the heat either spreads through a thick
/// wall in three dimensions or runs along a thin one in two.
struct CoolingTime {
    Time thick;        ///< t8/5 in three dimensions
    Time thin;         ///< t8/5 in two dimensions
    Length transition; ///< d_t; over it the wall counts as thick
    bool is_thick = true;

    Time t85() const { return is_thick ? thick : thin; }
};

/// t8/5 of EN 1011-2:2001+A1:2003, annex D, with shape factors F2 = F3 = 1 (run on plate): the thick form is
/// restated in a handbook, the thin one and d_t are from memory. For ferritic steels only; good to ±10 % at
/// best. Nothing for a wall or heat input of 0 and for a temperature of 500 °C or more, where the formula
/// ends.
/// @param start preheat or interpass temperature at the run.
std::optional<CoolingTime> cooling_time(EnergyPerLength heat_input, Temperature start, Length wall);

} // namespace ringfill
