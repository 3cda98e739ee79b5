#include <catch2/catch.hpp>

#include <ringfill/boring/cuts.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;

// Worked by hand: 96 mm in a bore of 90 mm is 3 mm deep; of 3.5 mm of weld 0.5 mm are left, of 2 mm none.
TEST_CASE("a groove cut again leaves the finished weld less its depth") {
    const std::vector<Groove> grooves = {{millimetres(89), millimetres(4)},
                                         {millimetres(96), millimetres(4)}};
    const auto cuts = groove_cuts(grooves, millimetres(45), millimetres(3.5));
    REQUIRE(cuts.size() == 1);
    CHECK(cuts.front().groove == 1);
    CHECK_THAT(mm(cuts.front().depth), WithinAbs(3, 1e-12));
    CHECK_THAT(mm(cuts.front().weld_left), WithinAbs(0.5, 1e-12));
    CHECK_THAT(mm(groove_cuts(grooves, millimetres(45), millimetres(2)).front().weld_left),
               WithinAbs(-1, 1e-12));
}
