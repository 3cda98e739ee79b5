#include <catch2/catch.hpp>

#include <ringfill/heat/shown_temperature.hpp>
#include <ringfill/units/metric.hpp>

#include "heat/asked_case.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

double degF(Temperature temperature) {
    return deg_c(temperature) * 1.8 + 32;
}

} // namespace

TEST_CASE("a computed minimum is rounded up and a maximum down, once") {
    CHECK_THAT(deg_c(rounded_up(celsius(232.2), UnitSystem::metric)), WithinAbs(235, 1e-9));
    CHECK_THAT(deg_c(rounded_up(celsius(235), UnitSystem::metric)), WithinAbs(235, 1e-9));
    CHECK_THAT(deg_c(rounded_down(celsius(288.4), UnitSystem::metric)), WithinAbs(285, 1e-9));
    CHECK_THAT(degF(rounded_up(celsius(232.2), UnitSystem::inch)), WithinAbs(450, 1e-9));
    CHECK_THAT(degF(rounded_down(celsius(288.4), UnitSystem::inch)), WithinAbs(550, 1e-9));
    const Temperature once = rounded_up(celsius(101.3), UnitSystem::inch);
    CHECK_THAT(degF(rounded_up(once, UnitSystem::inch)), WithinAbs(degF(once), 1e-9));
}

TEST_CASE(
    "what a document prints stands as printed in the scale that it prints, and is rounded in the other") {
    const AskedCase metric{.base = "steel/A36", .wall_mm = 42};
    CHECK_THAT(metric.minimum(), WithinAbs(65, 1e-9));
    AskedCase inch = metric;
    inch.units = UnitSystem::inch;
    CHECK_THAT(degF(inch.preheat().minimum->value), WithinAbs(150, 1e-9));
    const AskedCase shaft{.base = "steel/1045", .wall_mm = 24, .units = UnitSystem::inch};
    CHECK_THAT(degF(shaft.preheat().minimum->value), WithinAbs(400, 1e-9));       // 200 °C is 392 °F
    CHECK_THAT(degF(shaft.preheat().interpass_max->value), WithinAbs(660, 1e-9)); // 350 °C is 662 °F
}

TEST_CASE("the exact figures stay in the methods") {
    const AskedCase asked{.base = "steel/S355J2", .certificate = certificate(0.16, 1.35)};
    const PreheatMethod* b = method_named(asked.preheat(), "EN 1011-2 method B");
    const Preheat found = asked.preheat();
    b = method_named(found, "EN 1011-2 method B");
    REQUIRE(b);
    CHECK_THAT(deg_c(b->minimum.value()),
               WithinAbs(method_b_by_hand(index_of(cet_index, asked.what().composition), 24, 5, 0.8), 1e-6));
    CHECK_THAT(deg_c(b->counts.value()), WithinAbs(asked.minimum(), 1e-9));
}
