#pragma once

#include <cmath>

#include <ringfill/report/draw/drawn_bore.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {

/// A bore seen from the near face; 12 o'clock, or the middle of a detail, points up.
struct EndView {
    PaperPoint centre;
    double scale = 1; ///< mm of paper for a millimetre

    PaperPoint at(double radius, double angle) const {
        return {centre.x + scale * radius * std::sin(angle), centre.y - scale * radius * std::cos(angle)};
    }
    PaperPoint at(const ClockRadius& point) const { return at(mm(point.radius), point.clock.value()); }
};

/// Draws detail A, the wall of the bore at its deepest wear, enlarged and turned upright: worn outline, skim,
/// layers, finish, with a label each; over it its name and how much it is enlarged. @param top y over which
/// only the name stands. @param view_scale of the view it enlarges. @return its height under `top` [mm].
double draw_ring_detail(Svg& svg, const DrawnBore& drawn, double top, double view_scale);

} // namespace ringfill
