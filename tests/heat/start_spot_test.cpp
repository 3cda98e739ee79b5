#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

#include <boost/math/quadrature/gauss_kronrod.hpp>

#include "heat/boss_cases.hpp"

using namespace ringfill;
using Catch::WithinRel;
using testing::constant_metal;
using testing::shape_of;

namespace {

constexpr double band_K = 473.15;

double excess(const BossMesh& mesh, const HotMetal& metal, const std::vector<LaidRing>& rings, double depth) {
    return start_spot_excess(mesh, heat_curves(metal), rings, depth, band_K);
}

} // namespace

// The instantaneous point source on a half-space [heat conduction textbooks], integrated finely over the way
// of the arc round a bore of 100 mm in a boss without end; less what a ring all round gives, and less by the
// curvature of the bore.
TEST_CASE("on a huge boss the excess is that of a source moving over a half-space") {
    const HotMetal metal = constant_metal(600, 40);
    const double diffusivity = 40.0 / (8000 * 600);
    const BossMesh mesh = boss_mesh(shape_of(2000, 100, 3000));
    const double pi = std::numbers::pi;
    const double turn = pi * 0.1;
    const double time = 45;
    const double power = 2000;
    const double aside = 0.005;
    const double speed = turn * 37 / 36 / time;
    for (const double ago : {5.0, 12.0, 30.0, 60.0}) {
        CAPTURE(ago);
        const auto warmed = [&](double s) {
            const double spread = 4 * diffusivity * s;
            double round = -std::sqrt(pi * spread) / turn;
            for (const double begin : {0.0, turn}) // the arc passes the start place as it begins and ends
                round += std::exp(-std::pow(speed * (s - ago) - turn / 36 - begin, 2) / spread);
            return 2 * power / (8000 * 600) * std::pow(pi * spread, -1.5) * round *
                   std::exp(-aside * aside / spread) / (1 + std::sqrt(pi * spread / 4) / 0.1);
        };
        double expected = 0;
        for (int i = 0; i < 200; ++i)
            expected += boost::math::quadrature::gauss_kronrod<double, 31>::integrate(
                warmed, ago + time * i / 200, ago + time * (i + 1) / 200, 0);
        CHECK(expected > 1);
        CHECK_THAT(excess(mesh, metal, {{1.5 - aside, power, time, ago}}, 1.5), WithinRel(expected, 0.03));
    }
}

TEST_CASE("the excess falls with time and distance, and the last ring gives the most of it") {
    const HotMetal steel = testing::plain_steel();
    const BossMesh mesh = boss_mesh(shape_of(180, 95, 100));
    const auto after = [&](double ago, double away) {
        return excess(mesh, steel, {{0.05, 2220, 43, ago}}, 0.05 + away);
    };
    CHECK(after(5, 0.005) > after(12, 0.005));
    CHECK(after(12, 0.005) > after(30, 0.005));
    CHECK(after(30, 0.005) > after(90, 0.005));
    CHECK(after(12, 0.005) > after(12, 0.015));
    CHECK(after(600, 0.005) < 1);
    CHECK(after(12, 0.08) >= 0);
    CHECK_THAT(excess(mesh, steel, {{0.05, 4440, 43, 12}}, 0.055), WithinRel(2 * after(12, 0.005), 1e-12));
    CHECK_THAT(excess(mesh, steel, {{0.05, 2220, 43, 12}, {0.05, 2220, 43, 12}}, 0.055),
               WithinRel(2 * after(12, 0.005), 1e-12));
    CHECK(excess(mesh, steel, {}, 0.05) == 0);
}
