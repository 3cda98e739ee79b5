#include <catch2/catch.hpp>

#include <ringfill/boring/bar.hpp>

using namespace ringfill;
using Catch::WithinRel;

TEST_CASE("a cut takes its way over the feed") {
    // Worked by hand: 106 mm at 0.15 mm a turn and 200 rev/min, 106/30 min.
    CHECK_THAT(cutting_time(millimetres(106), millimetres(0.15), in_si<Turning>(200.0 / 60)).value(),
               WithinRel(212.0, 1e-12));
}
