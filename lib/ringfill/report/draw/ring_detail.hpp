#pragma once

#include <ringfill/report/draw/ring_section.hpp>

namespace ringfill {

/// How large detail A is drawn.
struct RingDetail {
    double scale;      ///< mm of paper for a millimetre of the bore
    double half_angle; ///< of the sector that is shown [rad]
    double inner;      ///< radii that it lies between [mm]
    double outer;
    double height; ///< on the paper [mm]
};

RingDetail ring_detail(const RingSection& section);

/// Draws the wall of the bore at its deepest wear, enlarged and turned upright: worn outline, skim, layers,
/// finish, with a label each. Nothing is drawn above `top` or below `top` + height.
void draw_ring_detail(Svg& svg, const RingSection& section, const RingDetail& detail, double top,
                      UnitSystem units);

} // namespace ringfill
