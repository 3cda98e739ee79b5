#include <ringfill/weld/faces_and_grooves.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

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
    Length path;
    for (int i = 1; i <= pad.rings; ++i)
        path += ring_path(innermost + (i - 0.5) * pad.bead.pitch);
    static_cast<Pass&>(pad) = pass_along(static_cast<double>(pad.layers) * path, pad.bead, deposition);
    return pad;
}

GrooveFill fill_groove(const Groove& groove, Length bore_radius, const Bead& unscaled,
                       const Deposition& deposition) {
    const Length r = groove.diameter / 2.0;
    if (r <= bore_radius)
        return {};
    const Volume volume = std::numbers::pi * (r * r - bore_radius * bore_radius) * groove.width;
    const Length path = volume / unscaled.section;
    return {{path, deposition.density * volume, path / unscaled.travel},
            volume,
            unscaled.travel,
            torch_speed(unscaled.travel, r)};
}

} // namespace ringfill
