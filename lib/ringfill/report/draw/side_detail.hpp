#pragma once

#include <ringfill/report/draw/side_view.hpp>

namespace ringfill {

/// How large detail B is drawn.
struct SideDetail {
    double scale;  ///< mm of paper for a millimetre
    double to;     ///< depth where it is cut off, or where the weld ends [mm]
    double outer;  ///< radius up to which the wall is shown [mm]
    double height; ///< on the paper [mm]
};

SideDetail side_detail(const RingSection& section, const RingRow& row);

/// Draws the first rings at the near face, enlarged, layers labelled and rings numbered. Nothing is drawn
/// above `top` or below `top` + height. @param length of the bore [mm].
void draw_side_detail(Svg& svg, const RingSection& section, const RingRow& row, const SideDetail& detail,
                      double top, double length, UnitSystem units);

} // namespace ringfill
