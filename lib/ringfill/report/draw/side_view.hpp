#pragma once

#include <ringfill/report/draw/drawn_bore.hpp>

namespace ringfill {

/// A section along the bore on the paper, at the clock position of the deepest wear: depth to the right, the
/// axis below.
struct SideView {
    const DrawnBore& drawn;
    double scale;  ///< mm of paper for a millimetre
    double face_x; ///< of the near face
    double axis_y;

    PaperPoint at(double depth, double radius) const {
        return {face_x + scale * depth, axis_y - scale * radius};
    }
    /// Length of the bore [mm].
    double length() const { return mm(drawn.bore.length); }
    /// Radius of the worn surface at a depth [mm].
    double worn(double depth) const {
        return mm(drawn.worn.radius(drawn.deepest.clock, millimetres(std::max(0.0, depth))));
    }
    /// Radius of the bore's wall before welding there [mm].
    double wall(double depth) const { return drawn.skimmed ? drawn.skim : worn(depth); }
    /// The wall between two depths, from the first to the second.
    PaperPoints wall_line(double from, double to) const;
};

/// The inner boundary of a layer between the ring row's begin and a depth, scalloped by the beads where that
/// can be seen. Nothing is drawn past `to`.
std::string layer_path(const SideView& view, std::size_t layer, double to);

/// Draws weld, worn surface, wall and finish of a bore between the ring row's begin and a depth.
void draw_weld(Svg& svg, const SideView& view, double to);

/// Numbers the rings of a layer up to a depth, as many as there is room for, with ticks that begin at the
/// weld. @param y of the base line of the numbers.
void draw_ring_numbers(Svg& svg, const SideView& view, double to, double y);

/// A face that is built up, as it is drawn [mm].
struct PadShape {
    double face;    ///< depth of the finished face
    double inwards; ///< 1 at the near face, −1 at the far one
    double worn;    ///< depth of the worn face under the finished one
    double over;    ///< how far the weld stands over the finished face
    double inner;   ///< radii of what is worn
    double outer;
};

/// The faces that are built up. The job does not say which face is which: the first is drawn at the near
/// face, the second at the far one, others are not drawn.
std::vector<PadShape> pad_shapes(const DrawnBore& drawn);

/// Draws boss, holes, and grooves that are filled, then the weld of the bore, then faces and grooves to be
/// cut again.
void draw_metal(Svg& svg, const SideView& view);

} // namespace ringfill
