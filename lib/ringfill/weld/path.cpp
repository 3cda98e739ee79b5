#include <ringfill/weld/path.hpp>

#include <cmath>
#include <numbers>

namespace ringfill {
namespace {

Length circle(Length radius) {
    return 2 * std::numbers::pi * radius;
}

} // namespace

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

} // namespace ringfill
