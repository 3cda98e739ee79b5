#include <catch2/catch.hpp>

#include <ringfill/boring/size_limits.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;

// Common practice, no source: 0.012 mm a metre and degree, so a bore of 100 mm that is 20 °C hot is about
// 0.024 mm large.
TEST_CASE("a bore grows in proportion to its diameter and what it is over 20 degrees") {
    CHECK_THAT(mm(growth(millimetres(100), 12e-6, celsius(40))), WithinAbs(0.024, 1e-12));
    CHECK_THAT(mm(growth(millimetres(100), 12e-6, celsius(20))), WithinAbs(0, 1e-12));
    CHECK_THAT(mm(growth(millimetres(100), 12e-6, celsius(-5))), WithinAbs(-0.030, 1e-12));
    CHECK_THAT(mm(growth(millimetres(50), 16e-6, celsius(70))), WithinAbs(0.040, 1e-12));
}
