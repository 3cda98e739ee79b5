#include <ringfill/weld/weld_working.hpp>

#include <ringfill/fault/place.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// What is set on the torch for a face: pitch, travel, and its speed on the innermost and outermost ring.
std::vector<Working> face_settings_working(const WeldFigures& weld, const Face& face, const FacePad& pad) {
    const Input kappa{"kappa", pad.bead.scale};
    const Input v{"v", mm_min(pad.bead.travel), "mm/min"};
    const Input inner{"D_i", mm(face.inner), "mm"};
    const Input overhang{"o", mm(weld.bore.overhang), "mm"};
    const Input pitch{"p", mm(pad.bead.pitch), "mm"};
    return {{"pitch_mm",
             "kappa*p_0",
             {kappa, {"p_0", mm(weld.unscaled.pitch), "mm"}},
             mm(pad.bead.pitch),
             "mm",
             "own"},
            {"travel_mm_min",
             "v_0/kappa^2",
             {{"v_0", mm_min(weld.unscaled.travel), "mm/min"}, kappa},
             mm_min(pad.bead.travel),
             "mm/min",
             "own"},
            {"torch_first_rpm",
             "v/(2*pi*(D_i/2 - o + p/2))",
             {v, inner, overhang, pitch},
             rev_min(pad.first_torch()),
             "rev/min",
             "own"},
            {"torch_last_rpm",
             "v/(2*pi*(D_i/2 - o + (N - 0.5)*p))",
             {v, inner, overhang, {"N", static_cast<double>(pad.rings)}, pitch},
             rev_min(pad.last_torch()),
             "rev/min",
             "own"}};
}

std::vector<Working> face_working(const WeldFigures& weld, const Face& face, const FacePad& pad) {
    const Input thickness{"t", mm(face.build), "mm"};
    const Input stock{"s", mm(weld.bore.stock), "mm"};
    const Input inner{"D_i", mm(face.inner), "mm"};
    const Input overhang{"o", mm(weld.bore.overhang), "mm"};
    const Input pitch{"p", mm(pad.bead.pitch), "mm"};
    const Input layers{"n", static_cast<double>(pad.layers)};
    const Input flat{"h_0", mm(weld.unscaled.layer_height()), "mm"};
    std::vector<Working> work = {{"layers",
                                  "ceil((t + s)/h_0 - 1e-9)",
                                  {thickness, stock, flat},
                                  static_cast<double>(pad.layers),
                                  "",
                                  "own"},
                                 {"rings",
                                  "ceil(((D_o - D_i)/2 + 2*o)/p - 1e-9)",
                                  {{"D_o", mm(face.outer), "mm"}, inner, overhang, pitch},
                                  static_cast<double>(pad.rings),
                                  "",
                                  "own"},
                                 {"scale",
                                  "max((t + s)/(n*h_0), sqrt(v_0/v_max))",
                                  {thickness,
                                   stock,
                                   layers,
                                   flat,
                                   {"v_0", mm_min(weld.unscaled.travel), "mm/min"},
                                   {"v_max", mm_min(weld.travel_limit), "mm/min"}},
                                  pad.bead.scale,
                                  "",
                                  "own"},
                                 {"path_mm",
                                  "n*2*pi*(N*(D_i/2 - o) + N^2*p/2)*(1 + omega/360)",
                                  {layers,
                                   {"N", static_cast<double>(pad.rings)},
                                   inner,
                                   overhang,
                                   pitch,
                                   {"omega", closing_overlap_deg, "deg"}},
                                  mm(pad.path),
                                  "mm",
                                  "practice"}};
    work.push_back({"extra_build_mm",
                    "n*kappa*h_0 - t - s",
                    {layers, {"kappa", pad.bead.scale}, flat, thickness, stock},
                    mm(pad.extra_build),
                    "mm",
                    "own"});
    append(work, face_settings_working(weld, face, pad));
    append(work, pass_working(weld, pad.bead, pad.path, pad.laid, pad.arc));
    return work;
}

std::vector<Working> groove_working(const WeldFigures& weld, const Groove& groove, const GrooveFill& fill) {
    std::vector<Working> work = {
        {"volume_mm3",
         "pi*max(r_g^2 - r_b^2, 0)*b",
         {{"r_g", mm(groove.diameter / 2.0), "mm"},
          {"r_b", mm(weld.build.mean_radius), "mm"},
          {"b", mm(groove.width), "mm"}},
         mm3(fill.volume),
         "mm3",
         "own"},
        {"path_mm",
         "V/A_0",
         {{"V", mm3(fill.volume), "mm3"}, {"A_0", mm2(weld.unscaled.section), "mm2"}},
         mm(fill.path),
         "mm",
         "own"}};
    append(work, pass_working(weld, weld.unscaled, fill.path, fill.laid, fill.arc));
    if (!(fill.volume > Volume()))
        return work;
    const Input travel{"v", mm_min(fill.travel), "mm/min"};
    work.push_back({"travel_mm_min",
                    "v_0/kappa^2",
                    {{"v_0", mm_min(weld.unscaled.travel), "mm/min"}, {"kappa", weld.unscaled.scale}},
                    mm_min(fill.travel),
                    "mm/min",
                    "own"});
    work.push_back({"torch_rpm",
                    "v/(pi*D_g)",
                    {travel, {"D_g", mm(groove.diameter), "mm"}},
                    rev_min(fill.torch),
                    "rev/min",
                    "own"});
    return work;
}

} // namespace

std::vector<Working> faces_working(const WeldFigures& weld, const std::vector<FacePad>& faces) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < faces.size(); ++i) {
        append(work, under(element_path("faces", i), face_working(weld, weld.bore.faces[i], faces[i])));
    }
    return work;
}

std::vector<Working> grooves_working(const WeldFigures& weld, const std::vector<GrooveFill>& grooves) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < grooves.size(); ++i) {
        append(work,
               under(element_path("grooves", i), groove_working(weld, weld.bore.grooves[i], grooves[i])));
    }
    return work;
}

} // namespace ringfill
