#include <catch2/catch.hpp>

#include <cmath>

#include <ringfill/weld/layers.hpp>

#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

constexpr double pi = 3.14159265358979323846;
const Speed no_limit = mm_min(1e9);

/// Where layers of a height end, in mm, by the words of section 5; negative when the ring closes.
double ends_at(double start, double height, int layers) {
    double squared = start * start;
    for (int n = 0; n < layers; ++n) {
        squared -= 2 * height * std::sqrt(squared);
        if (!(squared > 0))
            return -1;
    }
    return std::sqrt(squared);
}

struct Ring {
    double start;
    double target;
};

/// Rings from thin to thick, in bores from narrow to wide; the beads of these tests lay 2 mm.
const std::vector<Ring> rings = {{47.6, 43},  {46.2, 43.5},   {120, 101},  {25, 20},    {25, 12.3},
                                 {60, 59.99}, {60, 57.9},     {500, 490},  {18.4, 9.1}, {33.3, 21.21},
                                 {75, 62.5},  {150.5, 147.3}, {45, 43.001}};

} // namespace

// Balance of volume: one turn of the bead, 2 pi r A, fills the ring of one pitch between the two radii.
TEST_CASE("a layer fills the ring that its bead has the volume of") {
    const Bead bead = round_bead(mm_min(300));
    for (const double r : {5.0, 12.0, 46.0, 250.0, 4900.0}) {
        INFO("radius " << r << " mm");
        const auto radii = layer_radii(mm(r), bead.layer_height(), 1);
        REQUIRE(radii.size() == 2);
        const double after = as_mm(radii.back());
        const double ring = pi * (r * r - after * after) * as_mm(bead.pitch);
        CHECK_THAT(ring, WithinRel(2 * pi * r * as_mm2(bead.section), 1e-11));
        CHECK(after < r - 2); // tighter than on a plate
    }
}

// Worked by hand: sqrt(50^2 - 2 x 2 x 50) = sqrt(2300) = 47.958315, then sqrt(2300 - 4 x 47.958315)
// = 45.914777.
TEST_CASE("layers of 2 mm go from 50 to 47.958 to 45.915 mm") {
    const auto radii = layer_radii(mm(50), mm(2), 2);
    REQUIRE(radii.size() == 3);
    CHECK(radii[0] == mm(50));
    CHECK_THAT(as_mm(radii[1]), WithinAbs(47.958315, 5e-7));
    CHECK_THAT(as_mm(radii[2]), WithinAbs(45.914777, 5e-7));
}

TEST_CASE("a ring closes at twice the layer height") {
    CHECK(layer_radii(mm(4), mm(2), 5).size() == 1);
    CHECK(layer_radii(mm(1), mm(2), 5).size() == 1);
    CHECK(layer_radii(mm(4.001), mm(2), 1).size() == 2);
    // 10, 7.746, 5.387, 2.732, closed: worked by hand.
    CHECK(layer_radii(mm(10), mm(2), 5).size() == 4);
}

TEST_CASE("even layers end on the radius to weld to") {
    for (const Ring& ring : rings) {
        INFO(ring.start << " to " << ring.target << " mm");
        const auto laid = lay_layers(mm(ring.start), mm(ring.target), round_bead(mm_min(300)), no_limit);
        REQUIRE(laid);
        CHECK(laid->scale == laid->even_scale);
        CHECK(laid->end_radius == mm(ring.target));
        CHECK_THAT(ends_at(ring.start, 2 * laid->scale, laid->layers), WithinAbs(ring.target, 1e-9));
    }
}

TEST_CASE("the layers are the fewest that reach it with the whole bead") {
    for (const Ring& ring : rings) {
        INFO(ring.start << " to " << ring.target << " mm");
        const auto laid = lay_layers(mm(ring.start), mm(ring.target), round_bead(mm_min(300)), no_limit);
        REQUIRE(laid);
        CHECK(ends_at(ring.start, 2, laid->layers) <= ring.target + 1e-9);
        CHECK(ends_at(ring.start, 2, laid->layers - 1) > ring.target + 1e-9);
    }
}

TEST_CASE("a scale a little smaller or larger misses on either side") {
    for (const Ring& ring : rings) {
        INFO(ring.start << " to " << ring.target << " mm");
        const auto laid = lay_layers(mm(ring.start), mm(ring.target), round_bead(mm_min(300)), no_limit);
        REQUIRE(laid);
        CHECK(laid->scale > 0);
        CHECK(laid->scale <= 1);
        CHECK(ends_at(ring.start, 2 * laid->scale * (1 - 1e-8), laid->layers) > ring.target);
        CHECK(ends_at(ring.start, 2 * laid->scale * (1 + 1e-8), laid->layers) < ring.target);
    }
}

TEST_CASE("layers that come out even by themselves are not scaled") {
    for (const int layers : {1, 2, 5}) {
        const double target = ends_at(47.6, 2, layers);
        const auto laid = lay_layers(mm(47.6), mm(target), round_bead(mm_min(300)), no_limit);
        REQUIRE(laid);
        CHECK(laid->layers == layers);
        CHECK_THAT(laid->scale, WithinAbs(1, 1e-9));
        // A hair further in takes one more layer.
        CHECK(lay_layers(mm(47.6), mm(target - 1e-6), round_bead(mm_min(300)), no_limit)->layers ==
              layers + 1);
    }
}

// Section 5: v = v0/kappa^2 may not pass v_max; then kappa is sqrt(v0/v_max) and the weld ends inside the
// target.
TEST_CASE("a travel over its limit leaves extra stock") {
    int clamped = 0;
    for (const Ring& ring : rings)
        for (const double faster : {1.0, 1.05, 4.0 / 3, 3.0}) {
            INFO(ring.start << " to " << ring.target << " mm, " << faster << " times the travel");
            const auto laid =
                lay_layers(mm(ring.start), mm(ring.target), round_bead(mm_min(300)), mm_min(300 * faster));
            const auto free = lay_layers(mm(ring.start), mm(ring.target), round_bead(mm_min(300)), no_limit);
            if (!laid) { // at the scale of the fastest travel the ring closes
                CHECK(ends_at(ring.start, 2 * std::sqrt(1 / faster), free->layers) < 0);
                continue;
            }
            CHECK(laid->layers == free->layers);
            CHECK(laid->even_scale == free->even_scale);
            if (1 / std::pow(free->even_scale, 2) <= faster) {
                CHECK(laid->scale == free->scale);
                CHECK(laid->end_radius == mm(ring.target));
                continue;
            }
            ++clamped;
            CHECK_THAT(laid->scale, WithinRel(std::sqrt(1 / faster), 1e-14));
            CHECK(laid->end_radius < mm(ring.target));
            CHECK_THAT(as_mm(laid->end_radius),
                       WithinAbs(ends_at(ring.start, 2 * laid->scale, laid->layers), 1e-9));
        }
    CHECK(clamped > 10);
}

TEST_CASE("a ring that closes on the way has no layers") {
    // 10, 7.746, 5.387, 2.732 and then closed: worked by hand.
    const Bead bead = round_bead(mm_min(300));
    CHECK(lay_layers(mm(10), mm(2.8), bead, no_limit));
    CHECK_FALSE(lay_layers(mm(10), mm(2.7), bead, no_limit));
    CHECK_FALSE(lay_layers(mm(3), mm(2), bead, no_limit));
}

TEST_CASE("a bead far too small for its ring has no layers") {
    const Bead bead = scaled(round_bead(mm_min(300)), 1e-3); // layers of 2 micrometres
    CHECK_FALSE(lay_layers(mm(50), mm(47), bead, no_limit));
    const auto many = lay_layers(mm(50), mm(49.85), bead, no_limit);
    REQUIRE(many);
    CHECK(many->layers <= 100);
    CHECK_THAT(ends_at(50, 2e-3 * many->scale, many->layers), WithinAbs(49.85, 1e-9));
}

// Section 5, by hand: each layer of h takes r to sqrt(r^2 - 2 h r). A micrometre a layer, a hundred of them.
TEST_CASE("a hundred layers are the most") {
    Bead thin = round_bead(mm_min(300));
    thin.section *= 1e-3 / 2; // layers of 0.001 mm instead of 2
    double r = 50;
    for (int n = 0; n < 100; ++n)
        r = std::sqrt(r * r - 2 * 1e-3 * r);
    const auto laid = lay_layers(mm(50), mm(r + 1e-6), thin, mm_min(1e9));
    REQUIRE(laid);
    CHECK(laid->layers == 100);
    CHECK_FALSE(lay_layers(mm(50), mm(r - 1e-4), thin, mm_min(1e9)));
}
