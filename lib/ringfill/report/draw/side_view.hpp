#pragma once

#include <ringfill/report/draw/ring_section.hpp>

namespace ringfill {

/// A section along the bore on the paper: depth to the right, the axis below.
struct SideFrame {
    double scale;  ///< mm of paper for a millimetre
    double face_x; ///< of the near face
    double axis_y;

    PaperPoint at(double depth, double radius) const {
        return {face_x + scale * depth, axis_y - scale * radius};
    }
};

/// The rings of each layer, from the near face on.
struct RingRow {
    double begin; ///< depth where the first ring begins, the overhang before the near face [mm]
    double pitch; ///< [mm]
    int rings;
    double valley; ///< of the beads' crowns over the valleys [mm]

    double end() const { return begin + pitch * rings; }
};

RingRow ring_row(const WornBore& bore, const BorePlan& plan);

/// Radius of the bore's wall before welding at a depth, at the clock position of the deepest wear [mm].
double wall_at(const RingSection& section, double depth);
/// Radius of the worn surface there [mm].
double worn_at(const RingSection& section, double depth);

/// The wall of the bore between two depths, from the first to the second.
std::vector<PaperPoint> wall_line(const SideFrame& frame, const RingSection& section, double from, double to);

/// The boundaries of the layers between the ring row's begin and a depth as one path each, scalloped by the
/// beads where that can be seen; the last boundary apart. Nothing is drawn past `to`.
struct LayerPaths {
    std::string between;
    std::string last;
    double spacing; ///< of two layers on the paper, at least [mm]
};
LayerPaths layer_paths(const SideFrame& frame, const RingSection& section, const RingRow& row, double to);

/// Draws weld, worn surface, wall and finish of a bore between the ring row's begin and a depth.
/// @param length of the bore [mm].
void draw_weld(Svg& svg, const SideFrame& frame, const RingSection& section, const RingRow& row, double to,
               double length);

/// Numbers the rings of a layer up to a depth, as many as there is room for, with ticks that begin at the
/// weld. @param y of the base line of the numbers.
void draw_ring_numbers(Svg& svg, const SideFrame& frame, const RingSection& section, const RingRow& row,
                       double to, double y);

} // namespace ringfill
