#include <catch2/catch.hpp>

#include <ringfill/survey/worn_surface.hpp>

#include "survey/judge.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

// By the definition of a circle: the point at that radius and clock position lies r from the centre.
TEST_CASE("every point of an eccentric circle lies one radius from its centre") {
    for (const double e : {0.0, 0.3, 2.0, 20.0, 49.9})
        for (int degree = 0; degree < 360; degree += 7) {
            INFO("offset " << e << " mm at " << degree << " deg");
            const double theta = turn * degree / 360;
            const double r = as_mm(eccentric_radius(millimetres(50), millimetres(e), in_si<Angle>(theta)));
            CHECK(r > 0);
            CHECK_THAT(std::hypot(r * std::cos(theta) - e, r * std::sin(theta)), WithinRel(50, 1e-13));
        }
}

TEST_CASE("an eccentric circle is R + e towards its offset and R - e opposite") {
    CHECK_THAT(as_mm(eccentric_radius(millimetres(51), millimetres(0.6), Angle())), WithinAbs(51.6, 1e-12));
    CHECK_THAT(as_mm(eccentric_radius(millimetres(51), millimetres(0.6), in_si<Angle>(turn / 2))),
               WithinAbs(50.4, 1e-12));
    CHECK_THAT(as_mm(eccentric_radius(millimetres(51), millimetres(0.6), in_si<Angle>(turn / 4))),
               WithinRel(std::sqrt(51.0 * 51.0 - 0.36), 1e-14));
}

// Closed form of the mean, (2/pi) R E(e/R), by the elliptic integral of the C++ library; for R 51 and e 0.6
// mm the mean weld over 50 mm is 0.99823525 mm.
TEST_CASE("the mean radius of an eccentric circle is a complete elliptic integral") {
    const auto r = [](double theta) {
        return as_mm(eccentric_radius(millimetres(51), millimetres(0.6), in_si<Angle>(theta)));
    };
    const double mean = integral(r, 0, turn) / turn;
    CHECK_THAT(mean, WithinRel(2 / std::numbers::pi * 51 * std::comp_ellint_2(0.6 / 51), 1e-11));
    CHECK_THAT(mean - 50, WithinAbs(0.99823525, 5e-9));
}
