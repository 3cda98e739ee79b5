#pragma once

#include <ringfill/heat/heat_case.hpp>

namespace ringfill {

/// What a metal has in common with others as it is welded: the group of its grade; unknown metal with a
/// certificate goes with structural steel up to 0.25 % C and with low-alloy steel over it. Null: none is
/// known.
const HeatGroup* group_of(const HeatCase& heat_case);

/// Whether the certificate of unknown metal is that of quenched plate: up to 0.25 % C with boron from 0.0008
/// % or with over 0.5 % Cr and Mo together, since nobody gives its hardness [common practice, no source].
bool shows_quenched_plate(const HeatCase& heat_case);

/// No ring begins on such metal over it [°C; as quenched plate of 690 MPa].
inline constexpr double unknown_plate_most_degC = 200;

/// The grade whose own row stands for unknown metal that method B was not made for: of those that may hold
/// its C, Cr, Mo and Ni the one with the least alloy, then the least carbon. Null: no grade of the family
/// does.
const Base* likest_grade(const HeatCase& heat_case);

} // namespace ringfill
