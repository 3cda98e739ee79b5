#pragma once

#include <optional>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

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
