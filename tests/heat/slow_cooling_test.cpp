#include <catch2/catch.hpp>

#include <cmath>

#include <ringfill/heat/thermal_history.hpp>
#include <ringfill/units/metric.hpp>

#include "heat/fixed_step.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

ThermalLump lump(double kg) {
    ThermalLump made;
    made.mass = in_si<Mass>(kg);
    made.conductance = in_si<Conductance>(1.5);
    made.emitting = in_si<Area>(0.09);
    made.ambient = celsius(10);
    return made;
}

/// Time and heat by a fixed step, written here apart from the library.
std::pair<double, double> by_fixed_step(double kg, double from, double to, double rate) {
    double t = from + 273.15;
    double time = 0;
    double heat = 0;
    for (const double dt = 0.05; t > to + 273.15; time += dt) {
        const double loss =
            1.5 * (t - 283.15) + 0.09 * 5.670374419e-8 * (std::pow(t, 4) - std::pow(283.15, 4));
        const double gives_up = kg * stepped_c(t) * rate;
        heat += std::max(loss - gives_up, 0.0) * dt;
        t -= std::min(rate, loss / (kg * stepped_c(t))) * dt;
    }
    return {time, heat};
}

} // namespace

TEST_CASE("slow cooling takes the time and heat of an independent integration by a fixed step") {
    for (const double kg : {4.0, 15.0, 200.0}) {
        CAPTURE(kg);
        const auto slow = cool_slowly(lump(kg), celsius(350), celsius(60), 50.0 / 3600).value();
        const auto [time, heat] = by_fixed_step(kg, 350, 60, 50.0 / 3600);
        CHECK_THAT(slow.time.value(), WithinRel(time, 1e-3));
        CHECK_THAT(slow.heat.value(), WithinRel(heat, 2e-3) || WithinAbs(heat, 1.0));
    }
}

TEST_CASE("a boss that cools slower by itself needs nothing, one that is cold takes no time") {
    const auto heavy = cool_slowly(lump(500), celsius(200), celsius(60), 50.0 / 3600).value();
    CHECK(heavy.heat.value() == 0);
    CHECK(heavy.held.value() == 0);
    CHECK(cool_slowly(lump(10), celsius(50), celsius(60), 0.01)->time.value() == 0);
    CHECK_FALSE(cool_slowly(lump(10), celsius(50), celsius(10), 0.01));
}
