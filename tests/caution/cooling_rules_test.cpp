#include <catch2/catch.hpp>

#include <ringfill/heat/arc_energy.hpp>

#include "caution/preheat_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

// S690QL of 14 mm cooled in 3.5 s and nobody was told.
TEST_CASE("a cooling time outside the grade's window is told with the heat input that meets it") {
    PreheatSample sample;
    sample.heat.wall = sample.build.wall = millimetres(14);
    sample.heat.cooling = cooling_time(in_si<EnergyPerLength>(0.5e6), celsius(150), millimetres(14));
    REQUIRE(sample.heat.cooling);
    REQUIRE(sample.heat.cooling->t85().value() < 5);
    CHECK(sample.cautions().empty()); // no window: nothing
    sample.heat.t85_window_s = Sourced<std::pair<double, double>>{{5, 20}, "practice"};
    REQUIRE(sample.cautions().size() == 1);
    const auto met =
        cooling_time(heat_input_for(sample.heat, 5), sample.heat.preheat.minimum->value, *sample.heat.wall);
    REQUIRE(met);
    CHECK_THAT(met->t85().value(), Catch::WithinRel(5.0, 1e-6));
    CHECK_THAT(sample.cautions()[0], Catch::Contains("5 to 20 s are asked for"));
    CHECK_THAT(sample.cautions()[0], Catch::Contains("or more, since it hardens cooling fast"));
}

TEST_CASE("hardness over its group's limit is told on a certificate alone, with what lowers it") {
    PreheatSample sample;
    sample.heat.hardness = Hardness{420, false, Sourced<double>{380, "practice"}, true};
    REQUIRE(sample.cautions().size() == 1);
    CHECK_THAT(sample.cautions()[0],
               Catch::Contains("Expect about 420 HV beside the weld (by 60 HV more or less), over "
                               "the 380 HV of such steel: more heat input or more preheat"));
    sample.heat.hardness->is_martensite = true;
    CHECK_THAT(sample.cautions()[0], Catch::Contains("temper it, or lay a temper layer over its edge"));
    sample.heat.hardness->by_certificate = false;
    CHECK(sample.cautions().empty());
    sample.heat.hardness->by_certificate = true;
    sample.heat.hardness->vickers = 379;
    CHECK(sample.cautions().empty());
}

TEST_CASE("quenched plate is kept within what its maker allows, always") {
    PreheatSample sample;
    sample.heat.quenched = true;
    REQUIRE(sample.cautions().size() == 1);
    CHECK_THAT(sample.cautions()[0],
               Catch::Contains("Stay within the heat input that the maker of the steel allows"));
}

// P91 was sent from preheat to boring.
TEST_CASE("metal that must be heat-treated is sent there before it is bored") {
    PreheatSample sample;
    sample.heat.preheat.heat_treatment = {{"ASME B31.3", "2012", 13, {704, 746}, 60, 120, "practice"},
                                          {"ASME B31.3", "2016", 13, {650, 705}, 60, 15, "practice"}};
    REQUIRE(sample.cautions().size() == 1);
    CHECK_THAT(
        sample.cautions()[0],
        Catch::Contains("Send it to heat treatment before it is bored: 650 to 705 °C by ASME B31.3 (2016)"));
}
