#pragma once

#include <optional>

#include <ringfill/report/draw/side_view.hpp>

namespace ringfill {

/// A face that is built up, as it is drawn [mm].
struct PadShape {
    double worn;  ///< depth of the worn face under the finished one
    double over;  ///< how far the weld stands over the finished face
    double inner; ///< radii of what is worn
    double outer;
    double overhang; ///< past both
};

/// The job does not say which face is which: the first is drawn at the near face, the second at the far one,
/// others are not drawn.
std::optional<PadShape> pad_shape(const WornBore& bore, const BorePlan& plan, std::size_t face);

/// Depth of the middle of a groove as it is drawn: the job does not say where it is, so all are spread evenly
/// [mm].
double groove_depth(const WornBore& bore, std::size_t groove);

/// Draws boss, holes, and grooves that are filled, then the weld of the bore, then faces and grooves to be
/// cut again.
void draw_metal(Svg& svg, const SideFrame& frame, const RingSection& section, const WornBore& bore,
                const BorePlan& plan);

} // namespace ringfill
