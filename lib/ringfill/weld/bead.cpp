#include <ringfill/weld/bead.hpp>

#include <cmath>
#include <numbers>

namespace ringfill {
namespace {

Length circle(Length radius) {
    return 2 * std::numbers::pi * radius;
}

} // namespace

Bead bead(const Deposition& laid, Speed travel, double bead_ratio, double pitch_ratio) {
    const Area section = laid.rate / (laid.density * travel);
    const Length width = in_si<Length>(std::sqrt(1.5 * bead_ratio * section.value()));
    const Length crown = width / bead_ratio;
    return {1, section, width, crown, pitch_ratio * width, crown * pitch_ratio * pitch_ratio, travel};
}

Bead scaled(const Bead& bead, double scale) {
    const double square = scale * scale;
    return {bead.scale * scale, bead.section * square, bead.width * scale,  bead.crown * scale,
            bead.pitch * scale, bead.valley * scale,   bead.travel / square};
}

int rings_a_layer(Length welded_length, Length pitch) {
    return static_cast<int>(std::ceil((welded_length / pitch).value() - 1e-9));
}

Length ring_path(Length radius) {
    return circle(radius) * (1 + closing_overlap);
}

Length layer_path(TorchPath kind, int rings, Length radius, Length pitch) {
    if (kind == TorchPath::ring)
        return static_cast<double>(rings) * ring_path(radius);
    const Length turn = in_si<Length>(std::hypot(circle(radius).value(), pitch.value()));
    return static_cast<double>(rings) * turn + circle(radius);
}

Turning torch_speed(Speed travel, Length radius) {
    return travel / circle(radius);
}

Pass pass_along(Length path, const Bead& bead, const Deposition& deposition) {
    return {path, deposition.density * bead.section * path, path / bead.travel};
}

} // namespace ringfill
