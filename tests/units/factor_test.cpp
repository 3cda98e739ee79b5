#include <catch2/catch.hpp>

#include <string>
#include <vector>

#include <fmt/format.h>

#include "measured_text.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

/// One row of a published table: one of the unit in SI, as printed, and half of the last printed digit.
struct Published {
    std::string one;
    Kind kind;
    double si;
    double half_digit; ///< 0: printed in bold, which that table keeps for exact factors
};

// NIST Special Publication 811, 2008 edition, appendix B.8 (factors by alphabetical order). From memory.
const std::vector<Published> published = {
    {"1 ft", Kind::length, 3.048e-01, 0},
    {"1 in", Kind::length, 2.54e-02, 0},
    {"1 thou", Kind::length, 2.54e-05, 0}, // there "mil (0.001 in)"
    {"1 um", Kind::length, 1.0e-06, 0},    // there "micron"
    {"1 lb", Kind::mass, 4.535924e-01, 0.5e-07},
    {"1 oz", Kind::mass, 2.834952e-02, 0.5e-08},
    {"1 ft3", Kind::volume, 2.831685e-02, 0.5e-08},
    {"1 in3", Kind::volume, 1.638706e-05, 0.5e-11},
    {"1 L", Kind::volume, 1.0e-03, 0},
    {"1 ft/min", Kind::speed, 5.08e-03, 0},
    {"60 in/min", Kind::speed, 2.54e-02, 0},                // there "inch per second"
    {"60 ft3/h", Kind::volume_flow, 4.719474e-04, 0.5e-10}, // there "cubic foot per minute"
    {"1 min", Kind::time, 6.0e+01, 0},
    {"1 h", Kind::time, 3.6e+03, 0},
    {"1 deg", Kind::angle, 1.745329e-02, 0.5e-08},
};

} // namespace

TEST_CASE("a unit is worth what the published table prints") {
    for (const Published& row : published) {
        INFO(row.one);
        const double si = si_of(row.one, row.kind);
        if (row.half_digit > 0)
            CHECK_THAT(si, WithinAbs(row.si, row.half_digit));
        else
            CHECK_THAT(si, WithinRel(row.si, 1e-15));
    }
}

// The same publication, appendix B.8, degree Fahrenheit: T/K = (t/°F + 459.67)/1.8, and degree Celsius:
// T/K = t/°C + 273.15. From memory.
TEST_CASE("a temperature follows the published formula") {
    for (const double t : {-459.67, -40.0, 0.0, 32.0, 40.0, 212.0, 350.0, 1'500.0}) {
        INFO(t);
        CHECK_THAT(si_of(fmt::format("{} degF", t), Kind::temperature), WithinAbs((t + 459.67) / 1.8, 1e-10));
    }
    for (const double t : {-273.15, -40.0, 0.0, 4.0, 180.0, 1'500.0}) {
        INFO(t);
        CHECK_THAT(si_of(fmt::format("{} degC", t), Kind::temperature), WithinAbs(t + 273.15, 1e-10));
    }
}
