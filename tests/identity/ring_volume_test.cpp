#include <catch2/catch.hpp>

#include <cmath>

#include "identity/planned.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

namespace {

constexpr double pi = 3.14159265358979323846;

/// The ring that a layer would fill if its rings ended flush and did not run over their starts: its laid
/// volume, over the overlap of 10 degrees (of a helix: its turns as circles, without the closing ring), times
/// L_w / (N p).
double flush_volume(const BorePlan& bore, const Layer& layer) {
    const double circle = 2 * pi * layer.radius_before.value();
    const double rings = layer.rings;
    const double pitch = bore.bead.pitch.value();
    const double path = bore.torch_path == TorchPath::helix ? rings * std::hypot(circle, pitch) + circle
                                                            : rings * circle * 370 / 360;
    const double volume = layer.laid.value() / bore.deposition.density.value();
    return volume * (rings * circle / path) * bore.build.welded_length.value() / (rings * pitch);
}

} // namespace

// A layer at radius r with a bead A and pitch p lays A 2 pi r a ring. By section 5 its next radius has r'^2 =
// r^2 - 2 (A/p) r, so A 2 pi r L_w/p = pi (r^2 - r'^2) L_w: the flush volumes of all layers sum to the ring
// from the mean radius to where they end.
TEST_CASE("the layers of every job fill the ring from skim to end") {
    for (const std::uint64_t seed : seeds_for(1)) {
        INFO("seed " << seed);
        for (const BorePlan& bore : planned(random_sketch(seed)).bores) {
            double sum = 0;
            for (const Layer& layer : bore.layers)
                sum += flush_volume(bore, layer);
            const double r = bore.build.mean_radius.value();
            const double end = bore.layers.back().radius_after.value();
            REQUIRE_THAT(sum, WithinRel(pi * (r * r - end * end) * bore.build.welded_length.value(), 1e-10));
            // As many rings as cover the length, and not one more.
            const double covered = bore.layers.front().rings * bore.bead.pitch.value();
            REQUIRE(covered >= bore.build.welded_length.value() * (1 - 1e-9));
            REQUIRE(covered - bore.bead.pitch.value() < bore.build.welded_length.value());
        }
    }
}

TEST_CASE("skimmed and not clamped, the layers of every job fill the ideal ring") {
    int ideal = 0;
    for (const std::uint64_t seed : seeds_for(2)) {
        INFO("seed " << seed);
        for (const BorePlan& bore : planned(random_sketch(seed)).bores) {
            if (!bore.build.skimmed)
                continue;
            double sum = 0;
            for (const Layer& layer : bore.layers)
                sum += flush_volume(bore, layer);
            const double ring = bore.build.ring_volume.value();
            REQUIRE(sum >= ring * (1 - 1e-10)); // clamped, the weld ends inside the size asked for
            if (bore.layering.scale == bore.layering.even_scale) {
                ++ideal;
                REQUIRE_THAT(sum, WithinRel(ring, 1e-10));
            }
        }
    }
    CHECK(static_cast<std::uint64_t>(ideal) > random_jobs / seed_step / 3); // enough to mean something
}
