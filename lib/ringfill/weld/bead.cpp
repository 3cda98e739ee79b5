#include <ringfill/weld/bead.hpp>

#include <cmath>

namespace ringfill {
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

Pass pass_along(Length path, const Bead& bead, const Deposition& deposition) {
    return {path, deposition.density * bead.section * path, path / bead.travel};
}

} // namespace ringfill
