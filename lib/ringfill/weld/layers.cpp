#include <ringfill/weld/layers.hpp>

#include <cmath>
#include <cstdint>

#include <boost/math/tools/toms748_solve.hpp>

#include <fmt/format.h>

namespace ringfill {
namespace {

/// Two radii closer than this are the same: 1e-9 mm.
const Length same_radius = in_si<Length>(1e-12);

/// The fewest layers that reach the target, 0 when the ring closes first or there would be too many.
int count_layers(Length start, Length target, Length layer_height) {
    Length radius = start;
    for (int n = 1; n <= most_layers; ++n) {
        const auto next = next_radius(radius, layer_height);
        if (!next)
            return 0;
        if (*next <= target + same_radius)
            return n;
        radius = *next;
    }
    return 0;
}

/// The scale at which n layers end on the target. At scale 1 they reach it and the ring stays open, so it
/// does at every smaller one; at scale 0 they stay at the start.
double even_scale(Length start, Length target, Length layer_height, int layers) {
    const auto miss = [&](double scale) {
        return (layer_radii(start, scale * layer_height, layers).back() - target).value();
    };
    if (miss(1) >= -same_radius.value())
        return 1;
    std::uintmax_t steps = 200;
    const auto [low, high] = boost::math::tools::toms748_solve(
        miss, 0.0, 1.0, boost::math::tools::eps_tolerance<double>(50), steps);
    return (low + high) / 2;
}

} // namespace

std::optional<Length> next_radius(Length radius, Length layer_height) {
    const Area left = radius * radius - 2.0 * layer_height * radius;
    if (!(left > Area()))
        return std::nullopt;
    return in_si<Length>(std::sqrt(left.value()));
}

std::vector<Length> layer_radii(Length start, Length layer_height, int layers) {
    std::vector<Length> radii{start};
    for (int n = 0; n < layers; ++n) {
        const auto next = next_radius(radii.back(), layer_height);
        if (!next)
            break;
        radii.push_back(*next);
    }
    return radii;
}

std::optional<Layering> lay_layers(Length start, Length target, const Bead& unscaled, Speed travel_limit) {
    Layering result;
    result.layers = count_layers(start, target, unscaled.layer_height());
    if (result.layers == 0)
        return std::nullopt;
    result.even_scale = even_scale(start, target, unscaled.layer_height(), result.layers);
    result.scale = result.even_scale;
    result.end_radius = target;
    if (unscaled.travel / (result.even_scale * result.even_scale) > travel_limit) {
        result.scale = std::sqrt((unscaled.travel / travel_limit).value());
        const auto radii = layer_radii(start, result.scale * unscaled.layer_height(), result.layers);
        if (static_cast<int>(radii.size()) <= result.layers)
            return std::nullopt;
        result.end_radius = radii.back();
    }
    return result;
}

Fault ring_closes(const WornBore& bore, const Bead& bead) {
    return fault_at_path(
        bore.path, {},
        fmt::format("{} closes before it is built up, or takes far too many layers, with layers {} high",
                    bore.name, show(bead.layer_height(), UnitSystem::metric)),
        "choose a bead that fits the bore: another wire feed or travel");
}

std::vector<Layer> lay(const WornBore& bore, const Build& build, const Bead& as_laid,
                       const Layering& layering, TorchPath path, const Deposition& deposition) {
    const auto radii = layer_radii(build.mean_radius, as_laid.layer_height(), layering.layers);
    if (static_cast<int>(radii.size()) <= layering.layers)
        throw Faulty(Origin::job, ring_closes(bore, as_laid));
    std::vector<Layer> layers;
    const int rings = rings_a_layer(build.welded_length, as_laid.pitch);
    for (std::size_t j = 0; j + 1 < radii.size(); ++j)
        layers.push_back({pass_along(layer_path(path, rings, radii[j], as_laid.pitch), as_laid, deposition),
                          radii[j], radii[j + 1], rings, torch_speed(as_laid.travel, radii[j])});
    return layers;
}

std::vector<Fault> torch_faults(const WornBore& bore, const Torch& torch, const Build& build,
                                const Layering& layering, UnitSystem units) {
    std::vector<Fault> faults;
    if (torch.smallest_bore && 2.0 * layering.end_radius < *torch.smallest_bore)
        faults.push_back(
            fault_at_path("torch.smallest_bore", {},
                          fmt::format("is {}, but {} is built up to {}", show(*torch.smallest_bore, units),
                                      bore.name, show(2.0 * layering.end_radius, units)),
                          "take a smaller torch head, or leave less stock"));
    if (torch.reach && build.welded_length > *torch.reach)
        faults.push_back(
            fault_at_path("torch.reach", {},
                          fmt::format("is {}, but {} is welded over {}", show(*torch.reach, units), bore.name,
                                      show(build.welded_length, units)),
                          "take a longer torch head, or weld the bore from both ends as two bores"));
    return faults;
}

} // namespace ringfill
