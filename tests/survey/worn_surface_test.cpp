#include <catch2/catch.hpp>

#include <random>

#include <ringfill/survey/worn_surface.hpp>

#include "survey/judge.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

constexpr double pi = std::numbers::pi;

Length mm(double value) {
    return millimetres(value);
}

/// A round station.
WornStation round(double depth_mm, double radius_mm, std::size_t readings = 8) {
    return {mm(depth_mm), std::vector<Length>(readings, mm(radius_mm))};
}

/// Stations at random depths with random radii, the same on every machine.
std::vector<WornStation> random_stations(std::size_t count, std::size_t readings, std::uint64_t seed) {
    std::mt19937_64 draw(seed);
    const auto between = [&](double low, double high) {
        return low + (high - low) * std::ldexp(static_cast<double>(draw() >> 11), -53);
    };
    std::vector<WornStation> stations;
    for (std::size_t s = 0; s < count; ++s) {
        const double share = (static_cast<double>(s) + between(0.1, 0.9)) / static_cast<double>(count);
        WornStation station{mm(100 * share)};
        for (std::size_t i = 0; i < readings; ++i)
            station.radii.push_back(mm(between(45, 47)));
        stations.push_back(station);
    }
    return stations;
}

/// Radius of one clock reading at a depth, by the words of the rule: linear between stations, constant
/// beyond.
double radius_at(const std::vector<WornStation>& stations, std::size_t reading, double z) {
    if (z <= as_mm(stations.front().depth))
        return as_mm(stations.front().radii[reading]);
    for (std::size_t s = 1; s < stations.size(); ++s) {
        const double from = as_mm(stations[s - 1].depth);
        const double to = as_mm(stations[s].depth);
        if (z <= to)
            return std::lerp(as_mm(stations[s - 1].radii[reading]), as_mm(stations[s].radii[reading]),
                             (z - from) / (to - from));
    }
    return as_mm(stations.back().radii[reading]);
}

/// Volume by GSL quadrature along the depth, knot to knot, of the mean square radius.
double volume_by_quadrature(const std::vector<WornStation>& stations, double length) {
    const auto section_at = [&](double z) {
        double squares = 0;
        const std::size_t n = stations.front().radii.size();
        for (std::size_t i = 0; i < n; ++i)
            squares += std::pow(radius_at(stations, i, z), 2);
        return pi * squares / static_cast<double>(n);
    };
    std::vector<double> knots = {0};
    for (const WornStation& station : stations)
        knots.push_back(as_mm(station.depth));
    knots.push_back(length);
    double volume = 0;
    for (std::size_t k = 1; k < knots.size(); ++k)
        volume += knots[k] > knots[k - 1] ? integral(section_at, knots[k - 1], knots[k]) : 0;
    return volume;
}

} // namespace

TEST_CASE("worn volume with 1, 2 and 5 stations is the quadrature of the surface") {
    for (const std::size_t stations : {1u, 2u, 5u})
        for (const std::size_t readings : {3u, 8u, 13u}) {
            INFO(stations << " stations of " << readings);
            const auto worn = random_stations(stations, readings, 10 * stations + readings);
            CHECK_THAT(as_mm3(worn_volume(worn, mm(100))), WithinRel(volume_by_quadrature(worn, 100), 1e-10));
        }
}

TEST_CASE("stations on both faces leave nothing beyond them") {
    const std::vector<WornStation> worn = {round(0, 46), round(40, 47), round(100, 46.5)};
    CHECK_THAT(as_mm3(worn_volume(worn, mm(100))), WithinRel(volume_by_quadrature(worn, 100), 1e-10));
}

// Closed form pi L/3 (R1^2 + R1 R2 + R2^2): 51.5 to 50.6 mm over 60 mm holds 20012.5735 mm3 over a target of
// 50 mm.
TEST_CASE("two round stations at the faces are the frustum of a cone") {
    const double found = as_mm3(worn_volume({round(0, 51.5), round(60, 50.6)}, mm(60)));
    CHECK_THAT(found, WithinRel(pi * 20 * (51.5 * 51.5 + 51.5 * 50.6 + 50.6 * 50.6), 1e-13));
    CHECK_THAT(found - pi * 2500 * 60, WithinAbs(20012.5735, 5e-5));
    const auto section_at = [](double z) { return pi * std::pow(51.5 - 0.9 * z / 60, 2); };
    CHECK_THAT(found, WithinRel(integral(section_at, 0, 60), 1e-10)); // GSL quadrature
}

// Closed form pi L (Re^2 + 4/3 Re s + 8/15 s^2): Re 50.3, s 0.9 over 60 mm, 17130.8534 mm3 over 50 mm. Chords
// of a parabola of curvature r'' = -8 s/L^2 lie inside it by h^2 |r''|/12 on average, so with spans of h the
// volume is short by 2 pi r L h^2 |r''|/12: 3.2 mm3 at h = 1 mm. Expected error of that estimate, from the
// spread of r and the next order: 1 %.
TEST_CASE("round stations in a barrel fall short of it by the sagitta of their chords") {
    const double exact = pi * 60 * (50.3 * 50.3 + 4.0 / 3 * 50.3 * 0.9 + 8.0 / 15 * 0.81);
    CHECK_THAT(exact - pi * 2500 * 60, WithinAbs(17130.8534, 5e-5));
    const auto radius = [](double z) { return 50.3 + 0.9 * (1 - std::pow(2 * z / 60 - 1, 2)); };
    CHECK_THAT(exact,
               WithinRel(integral([&](double z) { return pi * std::pow(radius(z), 2); }, 0, 60), 1e-10));
    for (const int spans : {6, 15, 60, 600}) {
        INFO(spans << " spans");
        std::vector<WornStation> stations;
        for (int s = 0; s <= spans; ++s)
            stations.push_back(round(60.0 * s / spans, radius(60.0 * s / spans), 3));
        const double h = 60.0 / spans;
        const double mean_radius = 50.3 + 0.9 * 2 / 3;
        const double short_by = 2 * pi * mean_radius * 60 * h * h * (8 * 0.9 / 3600) / 12;
        CHECK_THAT(exact - as_mm3(worn_volume(stations, mm(60))), WithinRel(short_by, 0.01));
    }
}

// Closed forms for a circle of 51 mm, 0.6 mm off, over 80 mm: 25384.069 mm3 over a target of 50 mm;
// thickest 1.6, thinnest 0.4 mm.
TEST_CASE("one diameter with an offset is an eccentric cylinder") {
    const Survey found = survey(Worn{mm(102), mm(0.6), in_si<Angle>(turn / 3)}, mm(80));
    CHECK_THAT(as_mm3(found.worn_volume) - pi * 2500 * 80, WithinAbs(25384.069, 5e-4));
    CHECK_THAT(as_mm(found.largest.radius) - 50, WithinAbs(1.6, 1e-12));
    CHECK_THAT(found.largest.clock.value(), WithinRel(turn / 3, 1e-15));
    CHECK_THAT(as_mm(found.smallest.radius) - 50, WithinAbs(0.4, 1e-12));
    CHECK_THAT(found.smallest.clock.value(), WithinRel(turn * 5 / 6, 1e-15));
    CHECK(found.readings == 0);
    CHECK_FALSE(found.two_point);
    const auto section_at = [](double theta) {
        return std::pow(as_mm(eccentric_radius(mm(51), mm(0.6), in_si<Angle>(theta))), 2) / 2;
    };
    CHECK_THAT(as_mm3(found.worn_volume),
               WithinRel(80 * integral(section_at, 0, turn), 1e-10)); // GSL quadrature
}

TEST_CASE("the thin side lies opposite the offset on either half of the clock") {
    const auto clock = [](double share) {
        return survey(Worn{mm(102), mm(0.6), in_si<Angle>(turn * share)}, mm(80)).smallest.clock.value() /
               turn;
    };
    CHECK_THAT(clock(0), WithinAbs(0.5, 1e-15));
    CHECK_THAT(clock(0.25), WithinAbs(0.75, 1e-15));
    CHECK_THAT(clock(0.5), WithinAbs(0, 1e-15));
    CHECK_THAT(clock(0.75), WithinAbs(0.25, 1e-15));
}

TEST_CASE("a survey is the same all round only from one diameter on the axis") {
    CHECK(is_same_all_round(survey(Worn{mm(102), Length(), Angle()}, mm(80))));
    CHECK_FALSE(is_same_all_round(survey(Worn{mm(102), mm(0.6), Angle()}, mm(80))));
    const Worn round{.stations = {{mm(10), std::vector<Length>(8, mm(51))}}}; // read round, and found round
    CHECK_FALSE(is_same_all_round(survey(round, mm(80))));
}

TEST_CASE("the largest and smallest radius may stand at different stations") {
    Worn worn{
        .stations = {{mm(10), std::vector<Length>(8, mm(46))}, {mm(90), std::vector<Length>(8, mm(46))}}};
    worn.stations[1].radii[2] = mm(47);
    worn.stations[0].radii[5] = mm(45);
    const Survey found = survey(worn, mm(100));
    CHECK(found.largest.radius >= mm(47));
    CHECK(found.smallest.radius <= mm(45));
    CHECK_THAT(found.largest.clock.value(), WithinAbs(turn * 2 / 8, turn / 720 * 2));
    CHECK_THAT(found.smallest.clock.value(), WithinAbs(turn * 5 / 8, turn / 720 * 2));
    CHECK(found.largest_station == 1);
    CHECK(found.smallest_station == 0);
    CHECK(found.readings == 8);
    CHECK_FALSE(found.two_point);
}

TEST_CASE("a survey of two-point diameters says so and counts both ends") {
    const Worn worn{.stations = {{mm(10), {}, std::vector<Length>(4, mm(92))}}};
    const Survey found = survey(worn, mm(100));
    CHECK(found.readings == 8);
    CHECK(found.two_point);
    CHECK_THAT(as_mm3(found.worn_volume), WithinRel(pi * 46 * 46 * 100, 1e-13));
}
