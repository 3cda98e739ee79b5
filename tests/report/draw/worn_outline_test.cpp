#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

#include <ringfill/report/draw/drawn_bore.hpp>
#include <ringfill/units/metric.hpp>

#include "report/odd_jobs.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

WornOutline outline_of(const std::string& worn) {
    const WornBore bore =
        job_from(odd_job(R"("finish_diameter": 90, "length": 100, "worn": )" + worn)).bores.front();
    return {bore, survey(bore.worn, bore.length)};
}

Angle clock(double degrees) {
    return in_si<Angle>(degrees * std::numbers::pi / 180);
}

/// The radii at the steps that the outline is drawn in.
std::vector<Length> radii_of(const WornOutline& outline) {
    std::vector<Length> radii;
    for (int i = 0; i < outline.steps(); ++i)
        radii.push_back(outline.radius(in_si<Angle>(2 * std::numbers::pi * i / outline.steps())));
    return radii;
}

} // namespace

TEST_CASE("the outline passes through every reading of the station with the deepest wear") {
    const std::vector<double> deep = {45.4, 45.5, 45.9, 46.6, 47.1, 46.7, 46.0};
    const WornOutline outline = outline_of(R"({ "stations": [
        { "depth": 10, "radii": [45.3, 45.4, 45.7, 46.2, 46.5, 46.2, 45.7] },
        { "depth": 90, "radii": [45.4, 45.5, 45.9, 46.6, 47.1, 46.7, 46.0] } ] })");
    const auto radii = radii_of(outline);
    CHECK(radii.size() == 364); // the fewest from 360 on that 7 divides
    for (std::size_t i = 0; i < deep.size(); ++i)
        CHECK_THAT(mm(radii[i * 52]), WithinAbs(deep[i], 1e-9));
}

TEST_CASE("along the bore the radius is linear between two stations and constant outside") {
    const WornOutline outline = outline_of(R"({ "stations": [ { "depth": 10, "radii": [46, 46, 47, 46] },
                                                           { "depth": 90, "radii": [46, 46, 46.2, 46] } ] })");
    CHECK_THAT(mm(outline.radius(clock(180), millimetres(10))), WithinAbs(47, 1e-9));
    CHECK_THAT(mm(outline.radius(clock(180), millimetres(50))), WithinAbs(46.6, 1e-9));
    CHECK_THAT(mm(outline.radius(clock(180), millimetres(0))), WithinAbs(47, 1e-9));
    CHECK_THAT(mm(outline.radius(clock(180), millimetres(100))), WithinAbs(46.2, 1e-9));
    CHECK_THAT(mm(outline.radius(clock(90), millimetres(50))), WithinAbs(46, 1e-9));
}

TEST_CASE("a worn diameter is a circle off the axis") {
    const WornOutline outline =
        outline_of(R"({ "diameter": 93.4, "offset": "0.4 mm", "offset_clock": "90 deg" })");
    CHECK_THAT(mm(outline.radius(clock(90))), WithinAbs(47.1, 1e-9));
    CHECK_THAT(mm(outline.radius(clock(270))), WithinAbs(46.3, 1e-9));
    const auto centre = outline.centre();
    REQUIRE(centre);
    CHECK_THAT(mm(centre->radius), WithinAbs(0.4, 1e-9));
    CHECK_THAT(degrees(centre->clock), WithinAbs(90, 1e-9));
    // every point of it is as far from that centre as the others
    const auto radii = radii_of(outline);
    for (std::size_t i = 0; i < radii.size(); ++i) {
        const double angle =
            2 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(radii.size());
        CHECK_THAT(std::hypot(mm(radii[i]) * std::sin(angle) - 0.4, mm(radii[i]) * std::cos(angle)),
                   WithinAbs(46.7, 1e-9));
    }
}

TEST_CASE("the centre of swept readings is their first harmonic, whatever lobes lie over it") {
    std::string readings;
    for (int i = 0; i < 12; ++i) {
        const double angle = i * std::numbers::pi / 6;
        readings +=
            fmt::format("{}{:.12f}", i == 0 ? "" : ", ",
                        46 + 0.5 * std::cos(angle - std::numbers::pi * 4 / 3) + 0.2 * std::cos(3 * angle));
    }
    const auto centre =
        outline_of(R"({ "stations": [ { "depth": 50, "radii": [)" + readings + "] } ] }").centre();
    REQUIRE(centre);
    CHECK_THAT(mm(centre->radius), WithinAbs(0.5, 1e-9));
    CHECK_THAT(degrees(centre->clock), WithinAbs(240, 1e-7));
}

TEST_CASE("no centre is told where there is none off the axis, or two readings cannot tell") {
    CHECK_FALSE(outline_of(R"({ "diameter": 93.4 })").centre());
    CHECK_FALSE(outline_of(R"({ "stations": [ { "depth": 5, "diameters": [93, 93.4, 93] } ] })").centre());
}
