#include <ringfill/weld/passes.hpp>

#include <ringfill/weld/ring_closes.hpp>

namespace ringfill {

std::vector<Layer> lay(const WornBore& bore, const Build& build, const Bead& as_laid,
                       const Layering& layering, TorchPath path, const Deposition& deposition) {
    const auto radii = layer_radii(build.mean_radius, as_laid.layer_height(), layering.layers);
    if (static_cast<int>(radii.size()) <= layering.layers)
        throw Faulty(Origin::job, ring_closes(bore, as_laid));
    std::vector<Layer> layers;
    for (std::size_t j = 0; j + 1 < radii.size(); ++j) {
        Layer layer;
        layer.radius_before = radii[j];
        layer.radius_after = radii[j + 1];
        layer.rings = rings_a_layer(build.welded_length, as_laid.pitch);
        layer.path = layer_path(path, layer.rings, radii[j], as_laid.pitch);
        layer.laid = deposition.density * as_laid.section * layer.path;
        layer.arc = layer.path / as_laid.travel;
        layer.torch = torch_speed(as_laid.travel, radii[j]);
        layers.push_back(layer);
    }
    return layers;
}

} // namespace ringfill
