#include <ringfill/weld/weld_working.hpp>

#include <range/v3/algorithm/count_if.hpp>
#include <range/v3/numeric/accumulate.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/place.hpp>

namespace ringfill {
namespace {

/// The bead as laid, and the extra stock it leaves. Its κ is held back by the travel, or read off the last
/// layer, which ends on r_t.
std::vector<Working> bead_working(const Settings& settings, const BoreWeld& weld) {
    const Bead& bead = weld.bead;
    const Deposition& laid = weld.deposition;
    const auto radii = layer_radii(weld.build.skim_radius, bead.layer_height(), weld.layering.layers);
    const bool is_held_back = weld.layering.scale > weld.layering.even_scale;
    const std::string ratio_source =
        settings.procedure->bead_ratio ? "own" : settings.filler->bead_ratio.source;
    std::vector<Working> work = worked(
        inputs_of(Input("kappa", bead.scale), in_kg_m("mu", laid.linear_mass), in_m_min("f", laid.wire_feed),
                  Input("eta", laid.efficiency), in_kg_h("D", laid.rate), in_kg_m3("rho", laid.density),
                  in_mm_min("v_0", settings.unscaled_bead.travel), in_mm_min("v_max", settings.travel_limit),
                  Input("alpha", settings.bead_ratio), Input("phi", settings.pitch_ratio),
                  in_mm2("A", bead.section), in_mm("w", bead.width), in_mm("c", bead.crown),
                  in_mm("r_last", radii[radii.size() - 2]), in_mm("r_end", radii.back()),
                  in_mm("h_0", settings.unscaled_bead.layer_height())),
        {{"section_mm2",
          laid.piece ? "kappa^2*D/(60*rho*v_0/1000)*1e6" : "kappa^2*mu*f*eta/(rho*v_0/1000)*1e6",
          in_mm2(bead.section)},
         {"width_mm", "sqrt(1.5*alpha*A)", in_mm(bead.width), ratio_source},
         {"crown_mm", "w/alpha", in_mm(bead.crown), ratio_source},
         {"pitch_mm", "phi*w", in_mm(bead.pitch), "Suryakumar"},
         {"valley_mm", "c*phi^2", in_mm(bead.valley)},
         {"scale", is_held_back ? "sqrt(v_0/v_max)" : "(r_last^2 - r_end^2)/(2*h_0*r_last)",
          weld.layering.scale},
         {"travel_mm_min", "v_0/kappa^2", in_mm_min(bead.travel)}});
    work = under("bead", std::move(work));
    const Length end = weld.layering.end_radius;
    work.push_back(worked("build.extra_stock_mm", "r_t - r_end",
                          {{"r_t", in_mm(weld.build.weld_to_radius)}, {"r_end", in_mm(end)}},
                          in_mm(weld.build.weld_to_radius - end)));
    return work;
}

std::vector<Working> layers_working(const BoreWeld& weld) {
    const Bead& bead = weld.bead;
    const bool winds = weld.torch_path == TorchPath::helix;
    std::vector<Working> work;
    for (std::size_t i = 0; i < weld.layers.size(); ++i) {
        const Layer& layer = weld.layers[i];
        const Input h{"h", in_mm(bead.layer_height())};
        const Length outside = i > 0 ? weld.layers[i - 1].radius_before : Length();
        std::vector<Working> of_layer =
            worked(inputs_of(in_mm("D_m", 2.0 * weld.build.mean_radius), in_mm("r", outside), h),
                   {{"radius_before_mm", i > 0 ? "sqrt(r^2 - 2*h*r)" : "D_m/2", in_mm(layer.radius_before)}});
        append(of_layer,
               worked(inputs_of(in_mm("r", layer.radius_before), h, in_mm("L_w", weld.build.welded_length),
                                in_mm("p", bead.pitch), Input("N", layer.rings),
                                Input("omega", {closing_overlap_deg, "deg"}), in_mm_min("v", bead.travel),
                                in_kg_m3("rho", weld.deposition.density), in_mm2("A", bead.section),
                                in_mm("l", layer.path)),
                      {{"radius_after_mm", "sqrt(r^2 - 2*h*r)", in_mm(layer.radius_after)},
                       {"rings", "ceil(L_w/p - 1e-9)", layer.rings},
                       {"path_mm", winds ? "N*sqrt((2*pi*r)^2 + p^2) + 2*pi*r" : "N*2*pi*r*(1 + omega/360)",
                        in_mm(layer.path), winds ? "own" : "practice"},
                       {"torch_rpm", "v/(2*pi*r)", in_rev_min(layer.torch)},
                       {"laid_kg", "rho*A*l*1e-9", in_kg(layer.laid)},
                       {"arc_s", "60*l/v", in_seconds(layer.arc)}}));
        append(work, under(element_path("layers", i), std::move(of_layer)));
    }
    return work;
}

std::vector<Working> face_working(const GivenBore& given, const Face& face, const FacePad& pad) {
    const Bead& unscaled = given.settings.unscaled_bead;
    return worked(
        inputs_of(in_mm("t", face.build), in_mm("s", given.bore.stock), in_mm("D_i", face.inner),
                  in_mm("D_o", face.outer), in_mm("o", given.bore.overhang), in_mm("p", pad.bead.pitch),
                  Input("n", pad.layers), Input("N", pad.rings), in_mm("h_0", unscaled.layer_height()),
                  in_mm("p_0", unscaled.pitch), in_mm_min("v_0", unscaled.travel),
                  in_mm_min("v_max", given.settings.travel_limit), in_mm_min("v", pad.bead.travel),
                  Input("kappa", pad.bead.scale), Input("omega", {closing_overlap_deg, "deg"}),
                  in_kg_m3("rho", given.settings.deposition.density), in_mm2("A", pad.bead.section),
                  in_mm("l", pad.path)),
        {{"layers", "ceil((t + s)/h_0 - 1e-9)", pad.layers},
         {"rings", "ceil(((D_o - D_i)/2 + 2*o)/p - 1e-9)", pad.rings},
         {"scale", "max((t + s)/(n*h_0), sqrt(v_0/v_max))", pad.bead.scale},
         {"path_mm", "n*2*pi*(N*(D_i/2 - o) + N^2*p/2)*(1 + omega/360)", in_mm(pad.path), "practice"},
         {"extra_build_mm", "n*kappa*h_0 - t - s", in_mm(pad.extra_build)},
         {"pitch_mm", "kappa*p_0", in_mm(pad.bead.pitch)},
         {"travel_mm_min", "v_0/kappa^2", in_mm_min(pad.bead.travel)},
         {"torch_first_rpm", "v/(2*pi*(D_i/2 - o + p/2))", in_rev_min(pad.first_torch())},
         {"torch_last_rpm", "v/(2*pi*(D_i/2 - o + (N - 0.5)*p))", in_rev_min(pad.last_torch())},
         {"laid_kg", "rho*A*l*1e-9", in_kg(pad.laid)},
         {"arc_s", "60*l/v", in_seconds(pad.arc)}});
}

std::vector<Working> groove_working(const GivenBore& given, const Build& build, const Groove& groove,
                                    const GrooveFill& fill) {
    const Bead& unscaled = given.settings.unscaled_bead;
    const bool is_filled = fill.is_filled();
    return worked(inputs_of(in_mm("r_g", groove.diameter / 2.0), in_mm("D_g", groove.diameter),
                            in_mm("r_b", build.mean_radius), in_mm("b", groove.width),
                            in_mm3("V", fill.volume), in_mm2("A_0", unscaled.section),
                            in_mm2("A", unscaled.section), in_kg_m3("rho", given.settings.deposition.density),
                            in_mm("l", fill.path), in_mm_min("v_0", unscaled.travel),
                            in_mm_min("v", unscaled.travel), Input("kappa", unscaled.scale)),
                  {{"volume_mm3", "pi*max(r_g^2 - r_b^2, 0)*b", in_mm3(fill.volume)},
                   {"path_mm", "V/A_0", in_mm(fill.path)},
                   {"laid_kg", "rho*A*l*1e-9", in_kg(fill.laid)},
                   {"arc_s", "60*l/v", in_seconds(fill.arc)},
                   {"travel_mm_min", is_filled ? "v_0/kappa^2" : "", in_mm_min(fill.travel)},
                   {"torch_rpm", is_filled ? "v/(pi*D_g)" : "", in_rev_min(fill.torch)}});
}

/// Metal, time, and the wire, electrodes or rods that they take.
std::vector<Working> metal_working(const WornBore& bore, const BoreWeld& weld) {
    const Metal& metal = weld.metal;
    const Deposition& laid = weld.deposition;
    std::vector<Pass> passes(weld.layers.begin(), weld.layers.end());
    const auto each = [&](auto figure) {
        return passes | ranges::views::transform([=](const Pass& pass) { return (pass.*figure).value(); }) |
               ranges::to<std::vector>();
    };
    const std::vector<double> layer_masses = each(&Pass::laid);
    passes.insert(passes.end(), weld.faces.begin(), weld.faces.end());
    passes.insert(passes.end(), weld.grooves.begin(), weld.grooves.end());
    const int face_layers = ranges::accumulate(weld.faces, 0, std::plus<>(), &FacePad::layers);
    const bool keeps = metal.kept > Mass();
    std::vector<Working> work{
        worked("laid_kg", "sum(m)", {{"m", each(&Pass::laid), "kg"}}, in_kg(metal.laid))};
    append(work, worked(inputs_of(in_kg_m3("rho", laid.density), in_mm("r_m", weld.build.mean_radius),
                                  in_mm("r_f", weld.build.finish_radius), in_mm("L", bore.length),
                                  in_kg("m_kept", metal.kept), Input("m", layer_masses, "kg"),
                                  Input("t", each(&Pass::arc), "s")),
                        {{"kept_kg", keeps ? "rho*pi*(r_m^2 - r_f^2)*L*1e-9" : "", in_kg(metal.kept)},
                         {"kept_share", keeps ? "m_kept/sum(m)" : "", metal.kept_share},
                         {"arc_s", "sum(t)", in_seconds(metal.arc)}}));
    const bool is_wire = !laid.piece;
    const PieceLaid piece = laid.piece.value_or(PieceLaid());
    append(work, worked(inputs_of(in_kg("m", metal.laid), Input("eta", laid.efficiency),
                                  Input("n", is_wire ? metal.starts : metal.pieces),
                                  Input("l_trim", trim_a_start, "m"), in_kg_m("mu", laid.linear_mass),
                                  in_m_min("f", laid.wire_feed), in_kg("m_1", piece.mass),
                                  in_metres("L", piece.length), in_metres("s", piece.stub),
                                  Input("n_pieces", metal.pieces), Input("n_layers", weld.layers.size()),
                                  Input("n_face_layers", face_layers),
                                  Input("n_grooves", ranges::count_if(weld.grooves, &GrooveFill::is_filled)),
                                  Input("n_breaks", metal.breaks)),
                        {{"wire_kg", is_wire ? "m/eta + n*l_trim*mu" : "", in_kg(metal.wire), "practice"},
                         {"pieces",
                          is_wire            ? ""
                          : piece.of_covered ? "ceil(m/(m_1*(L - s)/L*eta) - 1e-9)"
                                             : "ceil(m/(mu*(L - s)*eta) - 1e-9)",
                          metal.pieces, piece.stub_source},
                         {"filler_kg", is_wire ? "" : "n*m_1", in_kg(metal.wire)},
                         {"starts",
                          !is_wire && piece.form == FillerForm::stick
                              ? "n_pieces + n_breaks"
                              : "n_layers + n_face_layers + n_grooves + n_breaks",
                          metal.starts},
                         {"deposition_kg_h", is_wire ? "60*mu*f*eta" : "", in_kg_h(laid.rate)}}));
    if (laid.piece)
        work.push_back(piece.rate);
    return under("metal", std::move(work));
}

} // namespace

std::vector<Working> weld_working(const GivenBore& given, const BoreWeld& weld) {
    const auto& [bore, settings, base] = given;
    std::vector<Working> work = bead_working(settings, weld);
    append(work, layers_working(weld));
    for (std::size_t i = 0; i < weld.faces.size(); ++i)
        append(work, under(element_path("faces", i), face_working(given, bore.faces[i], weld.faces[i])));
    for (std::size_t i = 0; i < weld.grooves.size(); ++i)
        append(work, under(element_path("grooves", i),
                           groove_working(given, weld.build, bore.grooves[i], weld.grooves[i])));
    append(work, metal_working(bore, weld));
    return work;
}

} // namespace ringfill
