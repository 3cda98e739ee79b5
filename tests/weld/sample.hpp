#pragma once

#include <ringfill/units/factor.hpp>
#include <ringfill/weld/bead.hpp>

#include "weld/parabola.hpp"

namespace ringfill::testing {

inline Length mm(double value) {
    return millimetres(value);
}

inline Speed mm_min(double value) {
    return in_si<Speed>(value * 1e-3 / factor::minute);
}

inline Speed m_min(double value) {
    return in_si<Speed>(value / factor::minute);
}

inline double as_mm(Length length) {
    return length.value() * 1e3;
}

inline double as_mm2(Area area) {
    return area.value() * 1e6;
}

inline double as_mm3(Volume volume) {
    return volume.value() * 1e9;
}

/// 1.2 mm steel wire at 8 m/min, 95 % of it deposited.
inline Deposition steel_wire() {
    Deposition laid;
    laid.density = in_si<Density>(7850);
    laid.linear_mass = solid_wire_mass(mm(1.2), laid.density);
    laid.efficiency = 0.95;
    laid.wire_feed = m_min(8);
    laid.rate = laid.linear_mass * laid.wire_feed * laid.efficiency;
    return laid;
}

/// A bead in round numbers, not of a wire: 6 mm wide, 2 mm high, pitch 4 mm, so 8 mm2 and layers of 2 mm.
inline Bead round_bead(Speed travel) {
    Bead bead;
    bead.width = mm(6);
    bead.crown = mm(2);
    bead.section = parabola_section(bead.width, bead.crown);
    bead.pitch = mm(4);
    bead.valley = mm(2 * 4.0 / 9.0);
    bead.travel = travel;
    return bead;
}

} // namespace ringfill::testing
