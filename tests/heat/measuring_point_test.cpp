#include <catch2/catch.hpp>

#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;

// ISO 13916:1996 clause 4.1, its rule read in a reproduction: 4 t, at most 50 mm, up to 50 mm of wall; then
// 75 mm.
TEST_CASE("the temperature is measured where ISO 13916 says") {
    const auto distance = [](double wall) { return mm(measuring_distance(millimetres(wall))); };
    CHECK_THAT(distance(8), WithinAbs(32, 1e-9));
    CHECK_THAT(distance(12.5), WithinAbs(50, 1e-9));
    CHECK_THAT(distance(50), WithinAbs(50, 1e-9));
    CHECK_THAT(distance(50.5), WithinAbs(75, 1e-9));
    CHECK_THAT(distance(60), WithinAbs(75, 1e-9));
}

// AWS D1.1 clause 5.6, read in a quotation: the thickness of the part, at least 3 in.
TEST_CASE("the heated zone is the wall, at least three inches") {
    CHECK_THAT(mm(heated_zone(millimetres(25.4))),
               WithinAbs(76.2, 1e-9)); // 3 in; the metric print rounds it to 75 mm
    CHECK_THAT(mm(heated_zone(millimetres(101.6))), WithinAbs(101.6, 1e-9));
}

// ISO 13916, from memory: 2 min for each 25 mm.
TEST_CASE("the heat evens out in two minutes for each inch") {
    CHECK_THAT(equalising_time(millimetres(25)).value(), WithinAbs(120, 1e-9));
    CHECK_THAT(equalising_time(millimetres(60)).value(), WithinAbs(288, 1e-9));
}
