#include <ringfill/weld/weld_working.hpp>

#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// Mass and time of every pass of a bore, in one list each.
struct Passes {
    std::vector<double> layer_kg;
    std::vector<double> all_kg;
    std::vector<double> all_s;
    double face_layers = 0;
    double grooves = 0;
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
std::vector<Working> filler_working(const WeldFigures& weld, const Passes& passes, double layers,
                                    const Metal& metal) {
    const Input eta{"eta", weld.deposition.efficiency};
    const Input mu{"mu", weld.deposition.linear_mass.value(), "kg/m"};
    const Input m{"m", metal.laid.value(), "kg"};
    const Working starts{"starts",
                         "n_layers + n_face_layers + n_grooves + n_breaks",
                         {{"n_layers", layers},
                          {"n_face_layers", passes.face_layers},
                          {"n_grooves", passes.grooves},
                          {"n_breaks", static_cast<double>(metal.breaks)}},
                         static_cast<double>(metal.starts),
                         "",
                         "own"};
    if (!weld.deposition.piece)
        return {{"wire_kg",
                 "m/eta + n*l_trim*mu",
                 {m, eta, {"n", static_cast<double>(metal.starts)}, {"l_trim", trim_a_start, "m"}, mu},
                 metal.wire.value(),
                 "kg",
                 "practice"},
                starts,
                {"deposition_kg_h",
                 "60*mu*f*eta",
                 {mu, {"f", m_min(weld.deposition.wire_feed), "m/min"}, eta},
                 kg_h(weld.deposition.rate),
                 "kg/h",
                 "own"}};
    const PieceLaid& piece = *weld.deposition.piece;
    const auto count = static_cast<double>(metal.pieces);
    const Input whole{"m_1", piece.mass.value(), "kg"};
    const Input length{"L", piece.length.value(), "m"};
    const Input stub{"s", piece.stub.value(), "m"};
    return {{"pieces",
             piece.of_covered ? "ceil(m/(m_1*(L - s)/L*eta) - 1e-9)" : "ceil(m/(mu*(L - s)*eta) - 1e-9)",
             {m, piece.of_covered ? whole : mu, length, stub, eta},
             count,
             "",
             piece.stub_source},
            {"filler_kg", "n*m_1", {{"n", count}, whole}, metal.wire.value(), "kg", "own"},
            piece.form == FillerForm::stick
                ? Working{"starts",
                          "n_pieces + n_breaks",
                          {{"n_pieces", count}, {"n_breaks", static_cast<double>(metal.breaks)}},
                          static_cast<double>(metal.starts),
                          "",
                          "own"}
                : starts,
            piece.rate};
}

} // namespace

std::vector<Working> metal_working(const WeldFigures& weld, const std::vector<Layer>& layers,
                                   const std::vector<FacePad>& faces, const std::vector<GrooveFill>& grooves,
                                   const Metal& metal) {
    const Passes passes = passes_of(layers, faces, grooves);
    std::vector<Working> work =
        under("metal", {{"laid_kg", "sum(m)", {{"m", passes.all_kg, "kg"}}, metal.laid.value(), "kg", "own"},
                        {"kept_kg",
                         "rho*pi*(r_m^2 - r_f^2)*L*1e-9",
                         {{"rho", weld.deposition.density.value(), "kg/m3"},
                          {"r_m", mm(weld.build.mean_radius), "mm"},
                          {"r_f", mm(weld.build.finish_radius), "mm"},
                          {"L", mm(weld.bore.length), "mm"}},
                         metal.kept.value(),
                         "kg",
                         "own"},
                        {"kept_share",
                         "m_kept/sum(m)",
                         {{"m_kept", metal.kept.value(), "kg"}, {"m", passes.layer_kg, "kg"}},
                         metal.kept_share,
                         "",
                         "own"},
                        {"arc_s", "sum(t)", {{"t", passes.all_s, "s"}}, metal.arc.value(), "s", "own"}});
    for (Working& one :
         under("metal", filler_working(weld, passes, static_cast<double>(layers.size()), metal)))
        work.push_back(std::move(one));
    if (!(metal.kept > Mass()))
        std::erase_if(work, [](const Working& one) { return one.figure.starts_with("metal.kept"); });
    return work;
}

} // namespace ringfill
