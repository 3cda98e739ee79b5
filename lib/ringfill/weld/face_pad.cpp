#include <ringfill/weld/face_pad.hpp>

#include <algorithm>
#include <cmath>

namespace ringfill {
namespace {

constexpr double most_steps = 10'000;

/// ⌈a/b − 1e-9⌉ layers or rings; 0 when there would be too many.
int steps(Length a, Length b) {
    const double count = std::ceil((a / b).value() - 1e-9);
    return count >= 1 && count <= most_steps ? static_cast<int>(count) : 0;
}

} // namespace

std::optional<FacePad> lay_face(const Face& face, Length stock, Length overhang, const Bead& unscaled,
                                Speed travel_limit, const Deposition& deposition) {
    const Length innermost = face.inner / 2.0 - overhang;
    const Length thickness = face.build + stock;
    FacePad pad;
    pad.layers = steps(thickness, unscaled.layer_height());
    if (innermost <= Length() || pad.layers == 0)
        return std::nullopt;
    const double even = (thickness / (static_cast<double>(pad.layers) * unscaled.layer_height())).value();
    const double slowest = std::sqrt((unscaled.travel / travel_limit).value());
    pad.bead = scaled(unscaled, std::max(even, slowest));
    const Length over = static_cast<double>(pad.layers) * pad.bead.layer_height() - thickness;
    pad.extra_build = std::max(over, Length()); // an even bead leaves rounding, of either sign
    pad.rings = steps((face.outer - face.inner) / 2.0 + 2.0 * overhang, pad.bead.pitch);
    if (pad.rings == 0)
        return std::nullopt;
    pad.first_radius = innermost + 0.5 * pad.bead.pitch;
    pad.last_radius = innermost + (pad.rings - 0.5) * pad.bead.pitch;
    for (int i = 1; i <= pad.rings; ++i)
        pad.path += ring_path(innermost + (i - 0.5) * pad.bead.pitch);
    pad.path *= pad.layers;
    pad.laid = deposition.density * pad.bead.section * pad.path;
    pad.arc = pad.path / pad.bead.travel;
    return pad;
}

} // namespace ringfill
