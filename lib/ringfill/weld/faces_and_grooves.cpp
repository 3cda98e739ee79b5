#include <ringfill/weld/faces_and_grooves.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <ringfill/fault/place.hpp>
#include <ringfill/weld/weld_working.hpp>

namespace ringfill {
namespace {

constexpr double most_steps = 10'000;

/// ⌈a/b − 1e-9⌉ layers or rings; 0 when there would be too many.
int steps(Length a, Length b) {
    const double count = std::ceil((a / b).value() - 1e-9);
    return count >= 1 && count <= most_steps ? static_cast<int>(count) : 0;
}

std::vector<Working> face_working(const WeldFigures& weld, const Face& face, const FacePad& pad) {
    const Input t{"t", in_mm(face.build)};
    const Input s{"s", in_mm(weld.bore.stock)};
    const Input inner{"D_i", in_mm(face.inner)};
    const Input overhang{"o", in_mm(weld.bore.overhang)};
    const Input p{"p", in_mm(pad.bead.pitch)};
    const Input n{"n", pad.layers};
    const Input rings{"N", pad.rings};
    const Input h_0{"h_0", in_mm(weld.unscaled.layer_height())};
    const Input kappa{"kappa", pad.bead.scale};
    const Input v_0{"v_0", in_mm_min(weld.unscaled.travel)};
    const Input v{"v", in_mm_min(pad.bead.travel)};
    std::vector<Working> work = {
        worked("layers", "ceil((t + s)/h_0 - 1e-9)", {t, s, h_0}, pad.layers),
        worked("rings", "ceil(((D_o - D_i)/2 + 2*o)/p - 1e-9)",
               {{"D_o", in_mm(face.outer)}, inner, overhang, p}, pad.rings),
        worked("scale", "max((t + s)/(n*h_0), sqrt(v_0/v_max))",
               {t, s, n, h_0, v_0, {"v_max", in_mm_min(weld.travel_limit)}}, pad.bead.scale),
        worked("path_mm", "n*2*pi*(N*(D_i/2 - o) + N^2*p/2)*(1 + omega/360)",
               {n, rings, inner, overhang, p, {"omega", {closing_overlap_deg, "deg"}}}, in_mm(pad.path),
               "practice"),
        worked("extra_build_mm", "n*kappa*h_0 - t - s", {n, kappa, h_0, t, s}, in_mm(pad.extra_build)),
        worked("pitch_mm", "kappa*p_0", {kappa, {"p_0", in_mm(weld.unscaled.pitch)}}, in_mm(pad.bead.pitch)),
        worked("travel_mm_min", "v_0/kappa^2", {v_0, kappa}, in_mm_min(pad.bead.travel)),
        worked("torch_first_rpm", "v/(2*pi*(D_i/2 - o + p/2))", {v, inner, overhang, p},
               in_rev_min(pad.first_torch())),
        worked("torch_last_rpm", "v/(2*pi*(D_i/2 - o + (N - 0.5)*p))", {v, inner, overhang, rings, p},
               in_rev_min(pad.last_torch()))};
    append(work, pass_working(weld, pad.bead, pad.path, pad.laid, pad.arc));
    return work;
}

std::vector<Working> groove_working(const WeldFigures& weld, const Groove& groove, const GrooveFill& fill) {
    std::vector<Working> work = {worked("volume_mm3", "pi*max(r_g^2 - r_b^2, 0)*b",
                                        {{"r_g", in_mm(groove.diameter / 2.0)},
                                         {"r_b", in_mm(weld.build.mean_radius)},
                                         {"b", in_mm(groove.width)}},
                                        in_mm3(fill.volume)),
                                 worked("path_mm", "V/A_0",
                                        {{"V", in_mm3(fill.volume)}, {"A_0", in_mm2(weld.unscaled.section)}},
                                        in_mm(fill.path))};
    append(work, pass_working(weld, weld.unscaled, fill.path, fill.laid, fill.arc));
    if (!(fill.volume > Volume()))
        return work;
    work.push_back(worked("travel_mm_min", "v_0/kappa^2",
                          {{"v_0", in_mm_min(weld.unscaled.travel)}, {"kappa", weld.unscaled.scale}},
                          in_mm_min(fill.travel)));
    work.push_back(worked("torch_rpm", "v/(pi*D_g)",
                          {{"v", in_mm_min(fill.travel)}, {"D_g", in_mm(groove.diameter)}},
                          in_rev_min(fill.torch)));
    return work;
}

} // namespace

std::optional<FacePad> lay_face(const Face& face, Length stock, Length overhang, const Bead& unscaled,
                                Speed travel_limit, const Deposition& deposition) {
    const Length innermost = face.inner / 2.0 - overhang;
    const Length thickness = face.build + stock;
    FacePad pad;
    pad.layers = steps(thickness, unscaled.layer_height());
    if (innermost <= Length() || pad.layers == 0)
        return std::nullopt;
    const double even = (thickness / (static_cast<double>(pad.layers) * unscaled.layer_height())).value();
    const double slowest = std::sqrt((unscaled.travel / travel_limit).value());
    pad.bead = scaled(unscaled, std::max(even, slowest));
    const Length over = static_cast<double>(pad.layers) * pad.bead.layer_height() - thickness;
    pad.extra_build = std::max(over, Length()); // an even bead leaves rounding, of either sign
    pad.rings = steps((face.outer - face.inner) / 2.0 + 2.0 * overhang, pad.bead.pitch);
    if (pad.rings == 0)
        return std::nullopt;
    pad.first_radius = innermost + 0.5 * pad.bead.pitch;
    pad.last_radius = innermost + (pad.rings - 0.5) * pad.bead.pitch;
    for (int i = 1; i <= pad.rings; ++i)
        pad.path += ring_path(innermost + (i - 0.5) * pad.bead.pitch);
    pad.path *= pad.layers;
    pad.laid = deposition.density * pad.bead.section * pad.path;
    pad.arc = pad.path / pad.bead.travel;
    return pad;
}

GrooveFill fill_groove(const Groove& groove, Length bore_radius, const Bead& unscaled,
                       const Deposition& deposition) {
    const Length r = groove.diameter / 2.0;
    if (r <= bore_radius)
        return {};
    GrooveFill fill;
    fill.volume = std::numbers::pi * (r * r - bore_radius * bore_radius) * groove.width;
    fill.path = fill.volume / unscaled.section;
    fill.laid = deposition.density * fill.volume;
    fill.arc = fill.path / unscaled.travel;
    fill.travel = unscaled.travel;
    fill.torch = torch_speed(unscaled.travel, r);
    return fill;
}

std::vector<Working> faces_working(const WeldFigures& weld, const std::vector<FacePad>& faces) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < faces.size(); ++i)
        append(work, under(element_path("faces", i), face_working(weld, weld.bore.faces[i], faces[i])));
    return work;
}

std::vector<Working> grooves_working(const WeldFigures& weld, const std::vector<GrooveFill>& grooves) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < grooves.size(); ++i)
        append(work,
               under(element_path("grooves", i), groove_working(weld, weld.bore.grooves[i], grooves[i])));
    return work;
}

} // namespace ringfill
