#include <catch2/catch.hpp>

#include <cmath>

#include "heat/asked_case.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

// 8620 was asked for 193 °C at 50.0 mm and for 315 at 50.2, S355J2 for 219 at 90 and for 315 at 91.
TEST_CASE("past the end of its table a grade goes on, and never by the row for unknown steel") {
    for (const auto& [base, end_mm] : {std::pair("steel/8620", 50.0),
                                       {"steel/4130", 50.0},
                                       {"steel/4340", 50.0},
                                       {"steel/S355J2", 90.0},
                                       {"steel/S690QL", 60.0}})
        for (const double hydrogen : {2.0, 5.0, 8.0, 15.0}) {
            INFO(base << ", " << hydrogen << " ml");
            const AskedCase before{.base = base, .wall_mm = end_mm, .hydrogen = hydrogen};
            const AskedCase after{.base = base, .wall_mm = end_mm + 1, .hydrogen = hydrogen};
            CHECK(after.minimum() - before.minimum() <= 30);
            CHECK(after.minimum() >= before.minimum());
            CHECK_FALSE(method_named(after.preheat(), "tabulated practice taken for unknown metal"));
        }
}

TEST_CASE("well past its table the higher of the hottest row and method B holds") {
    const AskedCase far{.base = "steel/4130", .wall_mm = 80, .hydrogen = 8};
    const Preheat asked = far.preheat();
    CHECK(asked.minimum->by == "EN 1011-2 method B");
    CHECK_THAT(
        far.minimum(),
        WithinAbs(std::ceil(method_b_by_hand(index_of(cet_index, far.what().composition), 80, 8, 0.8) / 5) *
                      5,
                  1e-9));
    const AskedCase hot{.base = "steel/4340", .wall_mm = 80};
    CHECK_THAT(hot.minimum(), WithinAbs(315, 1e-9));
    CHECK_FALSE(method_named(hot.preheat(), "tabulated practice for 4340")->in_range);
}

TEST_CASE("nothing usable is preheat without a figure, never a low one") {
    AskedCase none{.base = "steel/S355J2"};
    HeatCase what = none.what();
    what.composition.clear();
    what.reached = {};
    const Preheat asked = preheat(what);
    CHECK(asked.state == PreheatState::needed_without_figure);
    CHECK_FALSE(asked.figure());
}
