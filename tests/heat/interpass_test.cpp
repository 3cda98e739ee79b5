#include <catch2/catch.hpp>

#include "heat/asked_case.hpp"
#include "heat/heat_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

double maximum(HeatSample& sample) {
    return deg_c(sample.preheat().interpass_max.value().value);
}

} // namespace

// S355J2 of 24 mm went from 226 to 307 °C as its hydrogen rose from 2 to 15 ml/100 g.
TEST_CASE("the maximum between rings is the metal group's and does not move with hydrogen") {
    for (const double hydrogen : {1.0, 2.0, 5.0, 10.0})
        CHECK_THAT((AskedCase{.hydrogen = hydrogen}.maximum()), WithinAbs(250, 1e-9));
    const std::pair<AskedCase, double> groups[] = {
        {{.base = "steel/A913-65"}, 200},
        {{.base = "steel/S690QL", .wall_mm = 40}, 200},
        {{.base = "steel/S690QL", .wall_mm = 41}, 210},
        {{.base = "steel/400HB"}, 225},
        {{.base = "steel/1045"}, 350},
        {{.base = "steel/4140"}, 350},
        {{.base = "steel/10CrMo9-10"}, 350},
        {{.base = "steel/X10CrMoVNb9-1"}, 300},
        {{.base = "steel/12Ni14"}, 200},
        {{.base = "steel/G20Mn5"}, 350}, // its own row
        {{.base = "steel/A27 70-36"}, 250},
        {{.base = "stainless/304", .filler = "stainless/ER308L"}, 177},
        {{.base = "stainless/410", .filler = "stainless/ER410"}, 315},
        {{.base = "stainless/X3CrNiMo13-4", .filler = "stainless/ER410NiMo"}, 260},
        {{.base = "manganese_steel/A128-A", .filler = "manganese_steel/EFeMn-A"}, 200},
        {{.base = "nickel/N06625", .filler = "nickel/ERNiCrMo-3"}, 150},
        {{.base = "bronze/C95400", .filler = "bronze/ERCuAl-A2"}, 150}};
    for (const auto& [asked, most] : groups) {
        INFO(asked.base);
        CHECK_THAT(asked.maximum(), WithinAbs(most, 1e-9));
    }
}

TEST_CASE("a maximum of practice gives way to a minimum within 50 K of it, up to its end") {
    HeatSample sample({{"formula", 150}});
    CHECK_THAT(maximum(sample), WithinAbs(250, 1e-9));
    sample = HeatSample({{"formula", 220}});
    CHECK_THAT(maximum(sample), WithinAbs(270, 1e-9));
    CHECK(sample.preheat().interpass_max->gave_way);
    sample = HeatSample({{"formula", 300}});
    CHECK_THAT(maximum(sample), WithinAbs(315, 1e-9));
    CHECK(sample.preheat().narrow);
    sample = HeatSample({{"formula", 305}});
    CHECK(sample.preheat().state == PreheatState::contradictory); // under 15 K: no ring could begin
}

TEST_CASE("of several documents the lowest maximum holds, and none of them gives way") {
    HeatSample sample({{"formula", 150}});
    PreheatRow listed = row(0, 120);
    listed.maximum = Sourced<Temperature>{celsius(210), "practice"};
    listed.printed_maximum_degC = 210;
    sample.family.preheat_groups = {{"a document", {}, {}, {listed}}};
    CHECK_THAT(maximum(sample), WithinAbs(250, 1e-9)); // it does not list the grade
    sample.grade().preheat_groups = {"a document"};
    CHECK_THAT(maximum(sample), WithinAbs(210, 1e-9));
    CHECK(sample.preheat().interpass_max->by == "a document");
    sample = HeatSample({{"formula", 190}});
    sample.grade().tempering = Sourced<Temperature>{celsius(250), "practice"};
    CHECK_THAT(maximum(sample), WithinAbs(200, 1e-9));
    CHECK(sample.preheat().state == PreheatState::contradictory);
    sample.grade().tempering.reset();
    sample.grade().softens_over = Sourced<Temperature>{celsius(230), "practice"};
    CHECK_THAT(maximum(sample), WithinAbs(230, 1e-9));
}

// 309L on C45 and 18 8 Mn on S355J2 were stopped.
TEST_CASE("a filler of another kind has its own limits from the second layer on, and stops nothing") {
    const Preheat shaft = AskedCase{.base = "steel/C45", .filler = "stainless/ER309L"}.preheat();
    CHECK(shaft.state == PreheatState::figure);
    CHECK_THAT(deg_c(shaft.minimum->value), WithinAbs(200, 1e-9));
    CHECK_THAT(deg_c(shaft.interpass_max->value), WithinAbs(350, 1e-9));
    REQUIRE(shaft.later);
    CHECK_THAT(deg_c(shaft.later->minimum.value), WithinAbs(120, 1e-9));
    CHECK_THAT(deg_c(shaft.later->maximum.value), WithinAbs(177, 1e-9));
    CHECK(shaft.post_heat); // the base hardens beside any filler
    const Preheat plate = AskedCase{.filler = "stainless/18 8 Mn"}.preheat();
    CHECK(plate.state == PreheatState::figure);
    REQUIRE(plate.later);
    CHECK(plate.later->minimum.value <= plate.minimum->value);
    CHECK_FALSE((AskedCase{}.preheat().later));
}
