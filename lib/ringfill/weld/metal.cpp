#include <ringfill/weld/metal.hpp>

#include <numbers>

namespace ringfill {

Mass wire_for(Mass laid, int starts, const Deposition& deposition) {
    if (deposition.piece)
        return static_cast<double>(pieces_for(laid, *deposition.piece)) * deposition.piece->mass;
    return laid / deposition.efficiency +
           static_cast<double>(starts) * in_si<Length>(trim_a_start) * deposition.linear_mass;
}

Metal metal(const WornBore& bore, const BoreWeld& weld, int breaks) {
    const Deposition& deposition = weld.deposition;
    Metal sum;
    for (const Layer& layer : weld.layers) {
        sum.laid += layer.laid;
        sum.arc += layer.arc;
        ++sum.starts;
    }
    const Length r_f = weld.build.finish_radius;
    sum.kept = deposition.density * std::numbers::pi *
               (weld.build.mean_radius * weld.build.mean_radius - r_f * r_f) * bore.length;
    sum.kept_share = (sum.kept / sum.laid).value();
    for (const FacePad& face : weld.faces) {
        sum.laid += face.laid;
        sum.arc += face.arc;
        sum.starts += face.layers;
    }
    for (const GrooveFill& groove : weld.grooves) {
        sum.laid += groove.laid;
        sum.arc += groove.arc;
        sum.starts += groove.volume > Volume() ? 1 : 0;
    }
    if (deposition.piece) {
        sum.pieces = pieces_for(sum.laid, *deposition.piece);
        if (deposition.piece->form == FillerForm::stick)
            sum.starts = sum.pieces;
    }
    sum.breaks = breaks;
    sum.starts += breaks;
    sum.wire = wire_for(sum.laid, sum.starts, deposition);
    return sum;
}

} // namespace ringfill
