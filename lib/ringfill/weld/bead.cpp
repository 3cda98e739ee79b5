#include <ringfill/weld/bead.hpp>

#include <cmath>

namespace ringfill {
Area parabola_section(Length width, Length crown) {
    return 2.0 / 3.0 * width * crown;
}

Bead bead(const Deposition& laid, Speed travel, double bead_ratio, double pitch_ratio) {
    Bead result;
    result.section = laid.rate / (laid.density * travel);
    result.width = in_si<Length>(std::sqrt(1.5 * bead_ratio * result.section.value()));
    result.crown = result.width / bead_ratio;
    result.pitch = pitch_ratio * result.width;
    result.valley = result.crown * pitch_ratio * pitch_ratio;
    result.travel = travel;
    return result;
}

Bead scaled(const Bead& bead, double scale) {
    Bead result = bead;
    result.scale = bead.scale * scale;
    result.section *= scale * scale;
    result.width *= scale;
    result.crown *= scale;
    result.pitch *= scale;
    result.valley *= scale;
    result.travel /= scale * scale;
    return result;
}

Pass pass_along(Length path, const Bead& bead, const Deposition& laid) {
    return {path, laid.density * bead.section * path, path / bead.travel};
}

} // namespace ringfill
