#include <ringfill/weld/layers.hpp>

#include <algorithm>
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
    const auto radii = layer_radii(start, layer_height, most_layers);
    const auto last = std::find_if(radii.begin() + 1, radii.end(),
                                   [&](Length radius) { return radius <= target + same_radius; });
    return last == radii.end() ? 0 : static_cast<int>(last - radii.begin());
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

std::vector<Length> layer_radii(Length start, Length layer_height, int layers) {
    std::vector<Length> radii{start};
    for (int n = 0; n < layers; ++n) {
        const Area left = radii.back() * radii.back() - 2.0 * layer_height * radii.back();
        if (!(left > Area()))
            break;
        radii.push_back(in_si<Length>(std::sqrt(left.value())));
    }
    return radii;
}

std::optional<Layering> lay_layers(Length start, Length target, const Bead& unscaled, Speed travel_limit) {
    const int layers = count_layers(start, target, unscaled.layer_height());
    if (layers == 0)
        return std::nullopt;
    const double even = even_scale(start, target, unscaled.layer_height(), layers);
    if (unscaled.travel / (even * even) <= travel_limit)
        return Layering{layers, even, even, target};
    const double scale = std::sqrt((unscaled.travel / travel_limit).value());
    const auto radii = layer_radii(start, scale * unscaled.layer_height(), layers);
    if (static_cast<int>(radii.size()) <= layers)
        return std::nullopt;
    return Layering{layers, scale, even, radii.back()};
}

} // namespace ringfill
