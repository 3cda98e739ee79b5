#pragma once

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// How far from the edge of the weld the temperature is read, on the face towards the welder: 4 t, at most 50
/// mm, for walls up to 50 mm; thicker, 75 mm [m; ISO 13916:1996 clause 4.1, read in a reproduction].
Length measuring_distance(Length wall);

/// That of walls over 50 mm.
inline const Length thick_wall_distance = millimetres(75);

/// How far the preheat must reach from the weld in every direction: the wall, at least 3 in [m; AWS D1.1
/// clause 5.6, read in a quotation].
Length heated_zone(Length wall);

/// How long to wait after taking the heat away before a reading on the heated face holds: 2 min for each 25
/// mm of wall [ISO 13916, from memory].
Time equalising_time(Length wall);

} // namespace ringfill
