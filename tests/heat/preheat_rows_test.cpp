#include <catch2/catch.hpp>

#include <ringfill/heat/preheat_rows.hpp>

#include "heat/heat_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

// A wall of 25.01 mm is over 25 mm, and the hotter row counts; one of 25 mm typed in inches is not.
TEST_CASE("a wall a little over the limit of a row takes the next row") {
    const PreheatGroup group{"practice", {}, {}, {row(25, 200), row(0, 300)}};
    const auto minimum = [&](double wall_mm) {
        const Base base;
        HeatCase what;
        what.base = &base;
        what.wall = millimetres(wall_mm);
        return deg_c(look_up(group, what).value().minimum.value);
    };
    CHECK_THAT(minimum(25), Catch::WithinAbs(200, 1e-9));
    CHECK_THAT(minimum(25.000000001), Catch::WithinAbs(200, 1e-9));
    CHECK_THAT(minimum(25.01), Catch::WithinAbs(300, 1e-9));
}
