#include <catch2/catch.hpp>

#include <ringfill/heat/hot_metal.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinRel;

namespace {

double heat_of(double degrees) {
    return carbon_steel_specific_heat(celsius(degrees)).value();
}

double conductivity_of(double degrees) {
    return carbon_steel_conductivity(celsius(degrees)).value();
}

} // namespace

// EN 1993-1-2:2005, 3.4.1.2, its four ranges (restated in two technical articles, read there), by hand; a
// little to either side of each bound. The values of the first range stand there too, in J/(kg K).
TEST_CASE("the specific heat of carbon steel is that of each range of EN 1993-1-2") {
    struct Row {
        double degrees;
        double expected;
    };
    for (const Row& row :
         {Row{20, 439.80176}, Row{100, 487.62}, Row{200, 529.76}, Row{300, 564.74}, Row{400, 605.88},
          Row{600.5, 666 + 13'002 / 137.5}, Row{700, 666 + 13'002 / 38.0}, Row{734.5, 666 + 13'002 / 3.5},
          Row{735.5, 545 + 17'820 / 4.5}, Row{800, 545 + 17'820 / 69.0}, Row{899.5, 545 + 17'820 / 168.5},
          Row{900.5, 650}, Row{1100, 650}}) {
        INFO(row.degrees << " degC");
        CHECK_THAT(heat_of(row.degrees), WithinRel(row.expected, 1e-9));
    }
    CHECK(heat_of(0) == heat_of(20));
}

// EN 1993-1-2:2005, 3.4.1.3 (restated as well): 54 - 0.0333 T from 20 to 800 degC, then 27.3 W/(m K).
TEST_CASE("the conductivity of carbon steel falls to 800 degC and then stays") {
    CHECK_THAT(conductivity_of(0), WithinRel(54 - 0.666, 1e-12));
    CHECK_THAT(conductivity_of(150), WithinRel(54 - 4.995, 1e-12));
    CHECK_THAT(conductivity_of(500), WithinRel(37.35, 1e-12));
    CHECK_THAT(conductivity_of(799.5), WithinRel(54 - 0.0333 * 799.5, 1e-12));
    CHECK(conductivity_of(800.5) == 27.3);
}
