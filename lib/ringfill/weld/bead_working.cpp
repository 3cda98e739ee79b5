#include <ringfill/weld/weld_working.hpp>

#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// κ: held back by the travel, or read off the last layer, which ends on r_t.
Working scale_working(const WeldFigures& weld) {
    if (weld.layering.scale > weld.layering.even_scale)
        return {
            "scale",
            "sqrt(v_0/v_max)",
            {{"v_0", mm_min(weld.unscaled.travel), "mm/min"}, {"v_max", mm_min(weld.travel_limit), "mm/min"}},
            weld.layering.scale,
            "",
            "own"};
    const auto radii = layer_radii(weld.build.skim_radius, weld.bead.layer_height(), weld.layering.layers);
    return {"scale",
            "(r_last^2 - r_end^2)/(2*h_0*r_last)",
            {{"r_last", mm(radii[radii.size() - 2]), "mm"},
             {"r_end", mm(radii.back()), "mm"},
             {"h_0", mm(weld.unscaled.layer_height()), "mm"}},
            weld.layering.scale,
            "",
            "own"};
}

/// The section of the bead, from the wire feed or from the metal that electrodes or rods lay in an hour.
Working section_working(const WeldFigures& weld) {
    const Deposition& laid = weld.deposition;
    const Input kappa{"kappa", weld.bead.scale};
    const Input rho{"rho", laid.density.value(), "kg/m3"};
    const Input v_0{"v_0", mm_min(weld.unscaled.travel), "mm/min"};
    if (laid.piece)
        return {"bead.section_mm2",
                "kappa^2*D/(60*rho*v_0/1000)*1e6",
                {kappa, {"D", kg_h(laid.rate), "kg/h"}, rho, v_0},
                mm2(weld.bead.section),
                "mm2",
                "own"};
    return {"bead.section_mm2",
            "kappa^2*mu*f*eta/(rho*v_0/1000)*1e6",
            {kappa,
             {"mu", laid.linear_mass.value(), "kg/m"},
             {"f", m_min(laid.wire_feed), "m/min"},
             {"eta", laid.efficiency},
             rho,
             v_0},
            mm2(weld.bead.section),
            "mm2",
            "own"};
}

} // namespace

std::vector<Working> bead_working(const WeldFigures& weld) {
    const Input kappa{"kappa", weld.bead.scale};
    const Input alpha{"alpha", weld.bead_ratio};
    const Input phi{"phi", weld.pitch_ratio};
    return {
        section_working(weld),
        {"bead.width_mm",
         "sqrt(1.5*alpha*A)",
         {alpha, {"A", mm2(weld.bead.section), "mm2"}},
         mm(weld.bead.width),
         "mm",
         weld.bead_ratio_source},
        {"bead.crown_mm",
         "w/alpha",
         {{"w", mm(weld.bead.width), "mm"}, alpha},
         mm(weld.bead.crown),
         "mm",
         weld.bead_ratio_source},
        {"bead.pitch_mm",
         "phi*w",
         {phi, {"w", mm(weld.bead.width), "mm"}},
         mm(weld.bead.pitch),
         "mm",
         "Suryakumar"},
        {"bead.valley_mm",
         "c*phi^2",
         {{"c", mm(weld.bead.crown), "mm"}, phi},
         mm(weld.bead.valley),
         "mm",
         "own"},
        under("bead", {scale_working(weld)}).front(),
        {"bead.travel_mm_min",
         "v_0/kappa^2",
         {{"v_0", mm_min(weld.unscaled.travel), "mm/min"}, kappa},
         mm_min(weld.bead.travel),
         "mm/min",
         "own"},
        {"build.extra_stock_mm",
         "r_t - r_end",
         {{"r_t", mm(weld.build.weld_to_radius), "mm"}, {"r_end", mm(weld.layering.end_radius), "mm"}},
         mm(weld.build.weld_to_radius - weld.layering.end_radius),
         "mm",
         "own"},
    };
}

} // namespace ringfill
