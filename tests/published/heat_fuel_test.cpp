#include <catch2/catch.hpp>

#include <ringfill/table/fuels.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using Catch::WithinRel;

namespace {

/// What burning a kilogram of propane gives [kJ/kg], as a published value needs it.
double propane_net_kJ_kg() {
    for (const Fuel& fuel : testing::shop().fuels.fuels)
        if (fuel.name == "propane")
            return fuel.net_J_kg.value / 1e3;
    FAIL("no propane in the table");
    return 0;
}

} // namespace

// Sonntag, Borgnakke and Van Wylen, Fundamentals of Thermodynamics, example 15.11 (read in a companion):
// propane with air at 500 K, its water as vapour: 46,273 kJ/kg. The value at 25 °C differs by 0.2 %.
TEST_CASE("propane gives its net heating value") {
    CHECK_THAT(propane_net_kJ_kg(), WithinRel(46'273, 3e-3));
}

// Venkatesh, example 12.11 (read in a companion): propane gas, water liquid, M 44: 50,436 kJ/kg. The water of
// a kilogram, 4·18/44 kg, takes 2,442 kJ/kg to become vapour at 25 °C.
TEST_CASE("the gross heating value less the vapour of its water is the net one") {
    CHECK_THAT(propane_net_kJ_kg(), WithinRel(50'436 - 4.0 * 18 / 44 * 2442, 3e-3));
}
