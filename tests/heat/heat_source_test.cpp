#include <catch2/catch.hpp>

#include <ringfill/heat/heat_balance.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;

TEST_CASE("a heater that the job leaves out, or in part, comes from the table and is told") {
    const Fuels& fuels = testing::shop().fuels;
    const HeatSource none = heat_source(std::nullopt, fuels).value();
    CHECK(none.kind == "propane");
    CHECK(none.fuel == "propane");
    CHECK(none.power.value() == 30e3);
    CHECK(none.efficiency == 0.25);
    CHECK(none.into_metal().value() == 7.5e3);
    REQUIRE(none.assumed.size() == 3);
    CHECK(none.assumed[0].path == "heater.kind");
    CHECK(none.assumed[1].value == "30 kW");
    CHECK(none.assumed[2].source == "heater-shares");
    const HeatSource pads =
        heat_source(Heater{"resistance", in_si<Power>(8e3), 0.6, {}, {}, {}}, fuels).value();
    CHECK(pads.assumed.empty());
    CHECK(pads.fuel.empty());
    CHECK_THAT(pads.into_metal().value(), Catch::WithinRel(4.8e3, 1e-12));
    CHECK_FALSE(heat_source(std::nullopt, Fuels{}));
    // A flame is taken away before the arc, pads stay on, unless the job says otherwise.
    CHECK_FALSE(none.stays);
    CHECK(none.start_delay.value() == 120);
    CHECK_FALSE(none.skin);
    CHECK(pads.stays);
    const HeatSource flame =
        heat_source(Heater{"propane", {}, {}, true, in_si<Temperature>(600), in_si<Time>(30)}, fuels).value();
    CHECK(flame.stays);
    CHECK(flame.skin == in_si<Temperature>(600));
    CHECK(flame.start_delay.value() == 30);
}
