#include <catch2/catch.hpp>

#include <ringfill/survey/worn_surface.hpp>

#include "survey/judge.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

constexpr double pi = std::numbers::pi;

double eccentric(double theta) {
    return 0.6 * std::cos(theta) + std::sqrt(51 * 51 - 0.36 * std::sin(theta) * std::sin(theta));
}

double ellipse(double theta) {
    return 51.6 * 50.8 / std::hypot(50.8 * std::cos(theta), 51.6 * std::sin(theta));
}

double lobed(double theta) {
    return 51 + 0.30 * std::cos(2 * theta + 0.4) + 0.15 * std::cos(3 * theta + 1.1) +
           0.05 * std::cos(5 * theta + 2);
}

} // namespace

// Closed form: a circle's area does not depend on where one looks at it from, pi 51^2 mm2; 317.30086 mm2 over
// a target of 50 mm. Expected error of the trapezoid rule: r is analytic, its N-th wave falls as (e/R)^N, far
// under 1e-12 for 16 readings; the rest is rounding.
TEST_CASE("an eccentric circle has the section of the circle") {
    const double found = as_mm2(section(readings_of(eccentric, 16)));
    CHECK_THAT(found, WithinRel(pi * 51 * 51, 1e-13));
    CHECK_THAT(found - pi * 2500, WithinAbs(317.30086, 5e-6));
    CHECK_THAT(found, WithinRel(section_inside(eccentric), 1e-10)); // GSL quadrature
}

// Closed form: pi a b; 381.01236 mm2 over a target of 50 mm. Expected error: r^2 falls as ((a-b)/(a+b))^(N/2)
// from wave to wave, 1e-17 for 16 readings.
TEST_CASE("an ellipse has the section pi a b") {
    const double found = as_mm2(section(readings_of(ellipse, 16)));
    CHECK_THAT(found, WithinRel(pi * 51.6 * 50.8, 1e-13));
    CHECK_THAT(found - pi * 2500, WithinAbs(381.01236, 5e-6));
    CHECK_THAT(found, WithinRel(section_inside(ellipse), 1e-10)); // GSL quadrature
}

// Closed form: pi (R0^2 + half the sum of the squared amplitudes), whatever the phases; 317.48150 mm2 over 50
// mm. r^2 has waves up to the 10th, so 11 readings are exact; with 10 readings the 10th wave is taken for a
// constant, 0.05^2/2 cos(4) of it, and the section comes out wrong by pi times that.
TEST_CASE("a lobed outline is exact from 11 readings on and not with 10") {
    const double exact = pi * (51 * 51 + (0.09 + 0.0225 + 0.0025) / 2);
    for (const std::size_t readings : {11u, 12u, 16u, 36u, 360u})
        CHECK_THAT(as_mm2(section(readings_of(lobed, readings))), WithinRel(exact, 1e-13));
    CHECK_THAT(exact - pi * 2500, WithinAbs(317.48150, 5e-6));
    CHECK_THAT(exact, WithinRel(section_inside(lobed), 1e-10)); // GSL quadrature
    const double aliased = pi * 0.05 * 0.05 / 2 * std::cos(4.0);
    CHECK_THAT(as_mm2(section(readings_of(lobed, 10))) - exact, WithinRel(aliased, 1e-6));
}

TEST_CASE("a single reading is a circle") {
    CHECK_THAT(as_mm2(section({millimetres(10)})), WithinRel(pi * 100, 1e-15));
    CHECK(extremes({millimetres(10)}).largest.radius == millimetres(10));
    CHECK(extremes({millimetres(10)}).smallest.radius == millimetres(10));
}

// The thickest and thinnest weld over a target of 50 mm: closed forms R - R_t + e and R - R_t - e.
TEST_CASE("the eccentric circle is largest towards its offset and smallest opposite") {
    const auto readings = readings_of(eccentric, 24);
    CHECK_THAT(as_mm(extremes(readings).largest.radius) - 50, WithinAbs(1.6, 1e-11));
    CHECK_THAT(extremes(readings).largest.clock.value(), WithinAbs(0, 1e-15));
    CHECK_THAT(as_mm(extremes(readings).smallest.radius) - 50, WithinAbs(0.4, 1e-11));
    CHECK_THAT(extremes(readings).smallest.clock.value(), WithinRel(pi, 1e-15));
}

// Worked by hand: r = 50 + 0.3 cos(2 (theta - 30 deg)). Read every 45 deg it is never seen at its deepest, 30
// and 210 deg; the interpolant finds it there, on its grid of half degrees.
TEST_CASE("the deepest wear is found between the readings") {
    const auto oval = [](double theta) { return 50 + 0.3 * std::cos(2 * (theta - turn / 12)); };
    const auto readings = readings_of(oval, 8);
    CHECK(as_mm(*std::max_element(readings.begin(), readings.end())) < 50.27);
    CHECK_THAT(as_mm(extremes(readings).largest.radius), WithinAbs(50.3, 1e-11));
    const double clock = extremes(readings).largest.clock.value() / turn * 360;
    CHECK_THAT(std::fmod(clock, 180), WithinAbs(30, 1e-9));
    CHECK_THAT(as_mm(extremes(readings).smallest.radius), WithinAbs(49.7, 1e-11));
}
