#include <ringfill/weld/bead.hpp>

#include <cmath>

#include <ringfill/weld/weld_working.hpp>

namespace ringfill {
namespace {

/// κ: held back by the travel, or read off the last layer, which ends on r_t.
Working scale_working(const WeldFigures& weld) {
    if (weld.layering.scale > weld.layering.even_scale)
        return worked("bead.scale", "sqrt(v_0/v_max)",
                      {{"v_0", in_mm_min(weld.unscaled.travel)}, {"v_max", in_mm_min(weld.travel_limit)}},
                      weld.layering.scale);
    const auto radii = layer_radii(weld.build.skim_radius, weld.bead.layer_height(), weld.layering.layers);
    return worked("bead.scale", "(r_last^2 - r_end^2)/(2*h_0*r_last)",
                  {{"r_last", in_mm(radii[radii.size() - 2])},
                   {"r_end", in_mm(radii.back())},
                   {"h_0", in_mm(weld.unscaled.layer_height())}},
                  weld.layering.scale);
}

/// The section of the bead, from the wire feed or from the metal that electrodes or rods lay in an hour.
Working section_working(const WeldFigures& weld) {
    const Deposition& laid = weld.deposition;
    const Input kappa{"kappa", weld.bead.scale};
    const Input rho{"rho", in_kg_m3(laid.density)};
    const Input v_0{"v_0", in_mm_min(weld.unscaled.travel)};
    if (laid.piece)
        return worked("bead.section_mm2", "kappa^2*D/(60*rho*v_0/1000)*1e6",
                      {kappa, {"D", in_kg_h(laid.rate)}, rho, v_0}, in_mm2(weld.bead.section));
    return worked("bead.section_mm2", "kappa^2*mu*f*eta/(rho*v_0/1000)*1e6",
                  {kappa,
                   {"mu", in_kg_m(laid.linear_mass)},
                   {"f", in_m_min(laid.wire_feed)},
                   {"eta", laid.efficiency},
                   rho,
                   v_0},
                  in_mm2(weld.bead.section));
}

} // namespace

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

std::vector<Working> bead_working(const WeldFigures& weld) {
    const Bead& bead = weld.bead;
    const Input alpha{"alpha", weld.bead_ratio};
    const Input phi{"phi", weld.pitch_ratio};
    const Input w{"w", in_mm(bead.width)};
    return {section_working(weld),
            worked("bead.width_mm", "sqrt(1.5*alpha*A)", {alpha, {"A", in_mm2(bead.section)}},
                   in_mm(bead.width), weld.bead_ratio_source),
            worked("bead.crown_mm", "w/alpha", {w, alpha}, in_mm(bead.crown), weld.bead_ratio_source),
            worked("bead.pitch_mm", "phi*w", {phi, w}, in_mm(bead.pitch), "Suryakumar"),
            worked("bead.valley_mm", "c*phi^2", {{"c", in_mm(bead.crown)}, phi}, in_mm(bead.valley)),
            scale_working(weld),
            worked("bead.travel_mm_min", "v_0/kappa^2",
                   {{"v_0", in_mm_min(weld.unscaled.travel)}, {"kappa", bead.scale}}, in_mm_min(bead.travel)),
            worked("build.extra_stock_mm", "r_t - r_end",
                   {{"r_t", in_mm(weld.build.weld_to_radius)}, {"r_end", in_mm(weld.layering.end_radius)}},
                   in_mm(weld.build.weld_to_radius - weld.layering.end_radius))};
}

} // namespace ringfill
