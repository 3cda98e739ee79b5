#include <ringfill/weld/metal.hpp>

#include <numbers>

#include <ringfill/weld/weld_working.hpp>

namespace ringfill {
namespace {

/// Mass and time of every pass of a bore, in one list each.
struct Passes {
    std::vector<double> layer_kg;
    std::vector<double> all_kg;
    std::vector<double> all_s;
    int face_layers = 0;
    int grooves = 0;
};

Passes passes_of(const std::vector<Layer>& layers, const std::vector<FacePad>& faces,
                 const std::vector<GrooveFill>& grooves) {
    Passes passes;
    const auto add = [&](Mass laid, Time arc) {
        passes.all_kg.push_back(laid.value());
        passes.all_s.push_back(arc.value());
    };
    for (const Layer& layer : layers)
        add(layer.laid, layer.arc);
    passes.layer_kg = passes.all_kg;
    for (const FacePad& face : faces) {
        add(face.laid, face.arc);
        passes.face_layers += face.layers;
    }
    for (const GrooveFill& groove : grooves) {
        add(groove.laid, groove.arc);
        passes.grooves += groove.volume > Volume() ? 1 : 0;
    }
    return passes;
}

/// What fills the bore: mass of wire, or electrodes and rods with their mass; how fast, and how often it
/// starts.
std::vector<Working> filler_working(const WeldFigures& weld, const Passes& passes, std::size_t layers,
                                    const Metal& metal) {
    const Input eta{"eta", weld.deposition.efficiency};
    const Input mu{"mu", in_kg_m(weld.deposition.linear_mass)};
    const Input m{"m", in_kg(metal.laid)};
    const Input breaks{"n_breaks", metal.breaks};
    const Working starts = worked(
        "starts", "n_layers + n_face_layers + n_grooves + n_breaks",
        {{"n_layers", layers}, {"n_face_layers", passes.face_layers}, {"n_grooves", passes.grooves}, breaks},
        metal.starts);
    if (!weld.deposition.piece)
        return {worked("wire_kg", "m/eta + n*l_trim*mu",
                       {m, eta, {"n", metal.starts}, {"l_trim", trim_a_start, "m"}, mu}, in_kg(metal.wire),
                       "practice"),
                starts,
                worked("deposition_kg_h", "60*mu*f*eta",
                       {mu, {"f", in_m_min(weld.deposition.wire_feed)}, eta}, in_kg_h(weld.deposition.rate))};
    const PieceLaid& piece = *weld.deposition.piece;
    const Input whole{"m_1", in_kg(piece.mass)};
    const Input length{"L", in_metres(piece.length)};
    const Input stub{"s", in_metres(piece.stub)};
    return {
        worked("pieces",
               piece.of_covered ? "ceil(m/(m_1*(L - s)/L*eta) - 1e-9)" : "ceil(m/(mu*(L - s)*eta) - 1e-9)",
               {m, piece.of_covered ? whole : mu, length, stub, eta}, metal.pieces, piece.stub_source),
        worked("filler_kg", "n*m_1", {{"n", metal.pieces}, whole}, in_kg(metal.wire)),
        piece.form == FillerForm::stick
            ? worked("starts", "n_pieces + n_breaks", {{"n_pieces", metal.pieces}, breaks}, metal.starts)
            : starts,
        piece.rate};
}

} // namespace

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

std::vector<Working> metal_working(const WeldFigures& weld, const std::vector<Layer>& layers,
                                   const std::vector<FacePad>& faces, const std::vector<GrooveFill>& grooves,
                                   const Metal& metal) {
    const Passes passes = passes_of(layers, faces, grooves);
    std::vector<Working> work = {
        worked("laid_kg", "sum(m)", {{"m", passes.all_kg, "kg"}}, in_kg(metal.laid))};
    if (metal.kept > Mass()) {
        work.push_back(worked("kept_kg", "rho*pi*(r_m^2 - r_f^2)*L*1e-9",
                              {{"rho", in_kg_m3(weld.deposition.density)},
                               {"r_m", in_mm(weld.build.mean_radius)},
                               {"r_f", in_mm(weld.build.finish_radius)},
                               {"L", in_mm(weld.bore.length)}},
                              in_kg(metal.kept)));
        work.push_back(worked("kept_share", "m_kept/sum(m)",
                              {{"m_kept", in_kg(metal.kept)}, {"m", passes.layer_kg, "kg"}},
                              metal.kept_share));
    }
    work.push_back(worked("arc_s", "sum(t)", {{"t", passes.all_s, "s"}}, in_seconds(metal.arc)));
    append(work, filler_working(weld, passes, layers.size(), metal));
    return under("metal", std::move(work));
}

} // namespace ringfill
