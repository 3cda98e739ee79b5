#include <catch2/catch.hpp>

#include <ringfill/survey/worn_surface.hpp>

#include "survey/judge.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

Length mm(double value) {
    return millimetres(value);
}

} // namespace

TEST_CASE("stations of radii are as read") {
    const auto stations = stations_of(
        {.stations = {{mm(5), {mm(46), mm(46.2), mm(46.1)}}, {mm(90), {mm(45.9), mm(46), mm(46)}}}});
    REQUIRE(stations.size() == 2);
    CHECK(stations[0].depth == mm(5));
    CHECK(stations[0].radii == std::vector{mm(46), mm(46.2), mm(46.1)});
    CHECK(stations[1].depth == mm(90));
    CHECK(stations[1].radii == std::vector{mm(45.9), mm(46), mm(46)});
}

TEST_CASE("a two-point diameter stands half at its clock position and half opposite") {
    const auto stations = stations_of({.stations = {{mm(5), {}, {mm(93.4), mm(92.1), mm(92.6)}}}});
    REQUIRE(stations.size() == 1);
    CHECK(stations[0].depth == mm(5));
    const std::vector<double> expected = {46.7, 46.05, 46.3, 46.7, 46.05, 46.3};
    REQUIRE(stations[0].radii.size() == expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i)
        CHECK_THAT(as_mm(stations[0].radii[i]), WithinAbs(expected[i], 1e-12));
}

// By the definition of a circle: a round bore of 93.4 mm whose centre lies 0.4 mm off towards 70 deg is, seen
// from the target axis, at every clock position a point 46.7 mm from that centre.
TEST_CASE("a round outline of diameters with an offset is the true circle") {
    const double towards = turn * 70 / 360;
    for (const std::size_t count : {2u, 3u, 4u, 8u, 180u}) {
        const Worn worn{.offset = mm(0.4),
                        .offset_clock = in_si<Angle>(towards),
                        .stations = {{mm(5), {}, std::vector<Length>(count, mm(93.4))}}};
        const auto stations = stations_of(worn);
        const auto& radii = stations.front().radii;
        REQUIRE(radii.size() == 2 * count);
        for (std::size_t i = 0; i < radii.size(); ++i) {
            INFO(count << " diameters, reading " << i);
            const double theta = turn * static_cast<double>(i) / static_cast<double>(radii.size());
            const double r = as_mm(radii[i]);
            CHECK_THAT(std::hypot(r * std::cos(theta) - 0.4 * std::cos(towards),
                                  r * std::sin(theta) - 0.4 * std::sin(towards)),
                       WithinRel(46.7, 1e-13));
        }
    }
}

// Closed forms: area pi R^2, deepest R + e towards 45 deg, which 4 diameters (8 radii) have among their
// readings.
TEST_CASE("the offset of round diameters shows in the deepest wear and not in the area") {
    const Worn worn{.offset = mm(0.4),
                    .offset_clock = in_si<Angle>(turn / 8),
                    .stations = {{mm(5), {}, std::vector<Length>(4, mm(93.4))}}};
    const auto radii = stations_of(worn).front().radii;
    CHECK_THAT(as_mm2(section(radii)), WithinRel(std::numbers::pi * 46.7 * 46.7, 1e-13));
    CHECK_THAT(as_mm(extremes(radii).largest.radius), WithinAbs(47.1, 1e-8));
    CHECK_THAT(extremes(radii).largest.clock.value(), WithinAbs(turn / 8, 1e-12));
    CHECK_THAT(as_mm(extremes(radii).smallest.radius), WithinAbs(46.3, 1e-8));
}
