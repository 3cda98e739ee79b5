#include <ringfill/weld/metal.hpp>

#include <numbers>

namespace ringfill {

Mass wire_for(Mass laid, int starts, const Deposition& deposition) {
    if (deposition.piece)
        return static_cast<double>(pieces_for(laid, *deposition.piece)) * deposition.piece->mass;
    return laid / deposition.efficiency +
           static_cast<double>(starts) * in_si<Length>(trim_a_start) * deposition.linear_mass;
}

void add_breaks(Metal& metal, int breaks, const Deposition& deposition) {
    metal.breaks += breaks;
    metal.starts += breaks;
    metal.wire = wire_for(metal.laid, metal.starts, deposition);
}

Metal metal(const WornBore& bore, const Build& build, const std::vector<Layer>& layers,
            const std::vector<FacePad>& faces, const std::vector<GrooveFill>& grooves,
            const Deposition& deposition) {
    Metal sum;
    for (const Layer& layer : layers) {
        sum.laid += layer.laid;
        sum.arc += layer.arc;
        ++sum.starts;
    }
    const Length r_f = build.finish_radius;
    sum.kept = deposition.density * std::numbers::pi * (build.mean_radius * build.mean_radius - r_f * r_f) *
               bore.length;
    sum.kept_share = (sum.kept / sum.laid).value();
    for (const FacePad& face : faces) {
        sum.laid += face.laid;
        sum.arc += face.arc;
        sum.starts += face.layers;
    }
    for (const GrooveFill& groove : grooves) {
        sum.laid += groove.laid;
        sum.arc += groove.arc;
        sum.starts += groove.volume > Volume() ? 1 : 0;
    }
    if (deposition.piece) {
        sum.pieces = pieces_for(sum.laid, *deposition.piece);
        if (deposition.piece->form == FillerForm::stick)
            sum.starts = sum.pieces;
    }
    sum.wire = wire_for(sum.laid, sum.starts, deposition);
    return sum;
}

} // namespace ringfill
