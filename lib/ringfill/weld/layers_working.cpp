#include <ringfill/weld/weld_working.hpp>

#include <ringfill/fault/place.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

Working radius_before(const WeldFigures& weld, const std::vector<Layer>& layers, std::size_t i) {
    const double value = mm(layers[i].radius_before);
    if (i > 0)
        return {"radius_before_mm",
                "sqrt(r^2 - 2*h*r)",
                {{"r", mm(layers[i - 1].radius_before), "mm"}, {"h", mm(weld.bead.layer_height()), "mm"}},
                value,
                "mm",
                "own"};
    return {
        "radius_before_mm", "D_m/2", {{"D_m", mm(2.0 * weld.build.mean_radius), "mm"}}, value, "mm", "own"};
}

Working path(const WeldFigures& weld, const Layer& layer) {
    const Input rings{"N", static_cast<double>(layer.rings)};
    const Input r{"r", mm(layer.radius_before), "mm"};
    if (weld.torch_path == TorchPath::helix)
        return {"path_mm",
                "N*sqrt((2*pi*r)^2 + p^2) + 2*pi*r",
                {rings, r, {"p", mm(weld.bead.pitch), "mm"}},
                mm(layer.path),
                "mm",
                "own"};
    return {"path_mm",
            "N*2*pi*r*(1 + omega/360)",
            {rings, r, {"omega", closing_overlap_deg, "deg"}},
            mm(layer.path),
            "mm",
            "practice"};
}

} // namespace

std::vector<Working> layers_working(const WeldFigures& weld, const std::vector<Layer>& layers) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < layers.size(); ++i) {
        const Layer& layer = layers[i];
        const Input r{"r", mm(layer.radius_before), "mm"};
        const Input v{"v", mm_min(weld.bead.travel), "mm/min"};
        std::vector<Working> one = {
            radius_before(weld, layers, i),
            {"radius_after_mm",
             "sqrt(r^2 - 2*h*r)",
             {r, {"h", mm(weld.bead.layer_height()), "mm"}},
             mm(layer.radius_after),
             "mm",
             "own"},
            {"rings",
             "ceil(L_w/p - 1e-9)",
             {{"L_w", mm(weld.build.welded_length), "mm"}, {"p", mm(weld.bead.pitch), "mm"}},
             static_cast<double>(layer.rings),
             "",
             "own"},
            path(weld, layer),
            {"torch_rpm", "v/(2*pi*r)", {v, r}, rev_min(layer.torch), "rev/min", "own"},
        };
        const auto rest = pass_working(weld, weld.bead, layer.path, layer.laid, layer.arc);
        one.insert(one.end(), rest.begin(), rest.end());
        one = under(element_path("layers", i), std::move(one));
        work.insert(work.end(), one.begin(), one.end());
    }
    return work;
}

} // namespace ringfill
