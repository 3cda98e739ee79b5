#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

#include <ringfill/heat/thermal_history.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

/// A lump of constant specific heat in surroundings of one temperature.
ThermalLump lump(double kg, double c, double h_times_area, double emitting, double ambient_degC) {
    ThermalLump made;
    made.mass = in_si<Mass>(kg);
    made.metal.constant = in_si<SpecificHeat>(c);
    made.conductance = in_si<Conductance>(h_times_area);
    made.emitting = in_si<Area>(emitting);
    made.ambient = celsius(ambient_degC);
    return made;
}

ThermalState at(double degrees) {
    return {celsius(degrees), Energy(), Time()};
}

double sphere_volume(double radius) {
    return 4.0 / 3 * std::numbers::pi * radius * radius * radius;
}
double sphere_area(double radius) {
    return 4 * std::numbers::pi * radius * radius;
}

/// A sphere of a radius in metres.
ThermalLump sphere(double radius, double density, double c, double h, double ambient_degC) {
    return lump(density * sphere_volume(radius), c, h * sphere_area(radius), 0, ambient_degC);
}

double seconds(const ThermalLump& body, double from, double to) {
    return when_at(body, at(from), Power(), celsius(to)).value().time.value();
}

} // namespace

// Worked examples of heat-transfer textbooks, inputs and answers read in published companions to them;
// "exact" is the closed form t = (ρVc/hA) ln(θ₁/θ₂) worked out apart from this library.
TEST_CASE("lumps cool and warm as in printed examples") {
    // Incropera, Fundamentals of Heat and Mass Transfer, example 5.1: time constant 1 s; 25 to 199 °C in 5.2
    // s.
    CHECK_THAT(seconds(sphere(7.06e-4 / 2, 8500, 400, 400, 200), 25, 199), WithinAbs(5.16, 0.02));
    // Incropera, example 5.5a: 400 to 335 °C in 94 s; exact 93.8.
    CHECK_THAT(seconds(sphere(5e-3, 3000, 1000, 10, 20), 400, 335), WithinAbs(93.8, 0.1));
    // Cengel, Heat and Mass Transfer, example 4.1: 99 % of the step in 10 s; exact 9.94.
    CHECK_THAT(seconds(sphere(0.5e-3, 8500, 320, 210, 0), 100, 1), WithinAbs(9.94, 0.01));
    // Sachdeva, Fundamentals of Engineering Heat and Mass Transfer, example 5.2: slab of 5 mm, 123.43 s.
    CHECK_THAT(seconds(lump(9000 * 5e-3, 380, 2 * 90, 0, 30), 250, 90), WithinAbs(123.43, 0.01));
    // Sachdeva, example 5.4: sphere of 5.5 kg, 1,356 s.
    const double radius = std::cbrt(5.5 / 2700 / (4.0 / 3 * std::numbers::pi));
    CHECK_THAT(seconds(sphere(radius, 2700, 900, 58, 15), 290, 95), WithinAbs(1356, 1));
    // Som, Introduction to Heat Transfer, example 4.2: 1 % left after 36.84 s.
    CHECK_THAT(seconds(sphere(0.75e-3, 8000, 300, 75, 0), 100, 1), WithinAbs(36.84, 0.05));
}

// Incropera, example 5.3: a panel of 3 mm cured in an oven of 175 °C (h 40), then cooled in air of 25 °C (h
// 10), emissivity 0.8 on both sides: 150 °C after 123 s, 37 °C 987 s after the start.
TEST_CASE("convection and radiation together give a printed example") {
    const double mass = 2770 * 3e-3;
    const ThermalLump oven = lump(mass, 875, 2 * 40, 2 * 0.8, 175);
    const auto cured = when_at(oven, at(25), Power(), celsius(150)).value();
    CHECK_THAT(cured.time.value(), WithinAbs(123, 0.5));
    const ThermalState out = after(oven, cured, Power(), in_si<Time>(300));
    const ThermalLump air = lump(mass, 875, 2 * 10, 2 * 0.8, 25);
    CHECK_THAT(when_at(air, out, Power(), celsius(37)).value().time.value(), WithinAbs(987, 1.5));
}

// Incropera, example 1.2: a pipe of 70 mm at 200 °C, emissivity 0.8, h 15, room of 25 °C loses 998 W a metre.
TEST_CASE("the loss of a pipe is that of a printed example") {
    const double area = std::numbers::pi * 0.07;
    CHECK_THAT(heat_loss(lump(1, 500, 15 * area, 0.8 * area, 25), celsius(200)).value(),
               WithinAbs(998.4, 0.5));
}

// EN 1993-1-2:2005, 3.4.1.3: λ at 20, 400 and 800 °C as restated in articles; 27.3 above 800 °C.
TEST_CASE("carbon steel conducts as the standard says") {
    CHECK_THAT(carbon_steel_conductivity(celsius(20)).value(), WithinAbs(53.33, 0.005));
    CHECK_THAT(carbon_steel_conductivity(celsius(400)).value(), WithinAbs(40.68, 0.005));
    CHECK_THAT(carbon_steel_conductivity(celsius(800)).value(), WithinAbs(27.3, 0.005));
    CHECK(carbon_steel_conductivity(celsius(-30)) == carbon_steel_conductivity(celsius(20)));
}

// Regression from the formula of the same clause, worked out apart from this library.
TEST_CASE("regression: specific heat and heat content of carbon steel") {
    struct Row {
        double degrees, c, kJ_kg;
    };
    const Row rows[] = {{100, 487.6, 37.2},  {150, 510.4, 62.2},  {200, 529.8, 88.2},  {250, 547.3, 115.1},
                        {300, 564.7, 142.9}, {400, 605.9, 201.3}, {500, 666.5, 264.7}, {700, 1008.2, 419.1}};
    ThermalLump steel = lump(1, 500, 0, 0, 20);
    steel.metal.constant.reset();
    for (const Row& row : rows) {
        CAPTURE(row.degrees);
        CHECK_THAT(carbon_steel_specific_heat(celsius(row.degrees)).value(), WithinAbs(row.c, 0.05));
        CHECK_THAT(heat_content(steel, celsius(20), celsius(row.degrees)).value() / 1e3,
                   WithinAbs(row.kJ_kg, 0.06));
    }
    CHECK(carbon_steel_specific_heat(celsius(-40)) == carbon_steel_specific_heat(celsius(20)));
    // 100 kg from 20 to 150 °C: 6.22 MJ.
    steel.mass = in_si<Mass>(100);
    CHECK_THAT(heat_content(steel, celsius(20), celsius(150)).value() / 1e6, WithinAbs(6.22, 0.005));
}

TEST_CASE("what comes in is kept or lost") {
    ThermalLump steel = lump(12, 500, 3, 0.2, 10);
    steel.metal.constant.reset();
    for (const double power : {0.0, 300.0, 5000.0}) {
        const ThermalState from = at(180);
        const ThermalState to = after(steel, from, in_si<Power>(power), in_si<Time>(900));
        const double kept = heat_content(steel, from.temperature, to.temperature).value();
        CHECK_THAT(power * 900,
                   WithinAbs(kept + to.lost.value(), 1e-6 * (std::fabs(kept) + to.lost.value())));
    }
}

TEST_CASE("a temperature that is never reached is said to be") {
    const ThermalLump body = lump(1, 500, 2, 0, 20);
    CHECK_FALSE(when_at(body, at(100), Power(), celsius(20)));
    CHECK_FALSE(when_at(body, at(100), Power(), celsius(10)));
    CHECK(when_at(body, at(100), Power(), celsius(20.1)));
    CHECK_FALSE(when_at(body, at(20), in_si<Power>(100), celsius(70))); // it settles there
    CHECK(when_at(body, at(20), in_si<Power>(100), celsius(69)));
    CHECK_FALSE(when_at(body, at(90), in_si<Power>(100), celsius(60)));
    CHECK(when_at(body, at(50), Power(), celsius(50)).value().time.value() == 0);
    const ThermalLump slow = lump(1e9, 500, 1e-6, 0, 20);
    CHECK_FALSE(when_at(slow, at(100), Power(), celsius(50))); // not within ten days
}

TEST_CASE("a target is met to the microkelvin") {
    ThermalLump steel = lump(8, 500, 2, 0.1, -5);
    steel.metal.constant.reset();
    const auto there = when_at(steel, at(300), Power(), celsius(123.4)).value();
    CHECK_THAT(deg_c(there.temperature), WithinAbs(123.4, 1e-7));
    const ThermalState again = after(steel, at(300), Power(), there.time);
    CHECK_THAT(deg_c(again.temperature), WithinAbs(123.4, 1e-5));
}

TEST_CASE("the states on the way are those that a run to each would end in, at the cost of one run") {
    const ThermalLump body = lump(12, 480, 3, 0.2, 20);
    const Time time = in_si<Time>(2'400);
    const auto states = on_the_way(body, at(20), in_si<Power>(900), time, 12);
    REQUIRE(states.size() == 11);
    for (int i = 1; i < 12; ++i) {
        const ThermalState alone = after(body, at(20), in_si<Power>(900), time * (i / 12.0));
        const ThermalState& one = states[static_cast<std::size_t>(i - 1)];
        CHECK(one.temperature.value() == alone.temperature.value());
        CHECK(one.time.value() == alone.time.value());
        CHECK(one.evaluations == alone.evaluations);
        CHECK(one.evaluations > 0);
    }
    CHECK(on_the_way(body, at(20), in_si<Power>(900), Time(), 12).empty());
}

// Closed form: 5 kg of 500 J/(kg K) that lose 1 W/K to air of 20 degC settle with 100.5 W at 120.5 degC,
// and pass 120 on the way after m c/hA ln(100.5/0.5).
TEST_CASE("half a watt over the loss at the goal still reaches it") {
    const ThermalLump body = lump(5, 500, 1, 0, 20);
    const auto there = when_at(body, at(20), in_si<Power>(100.5), celsius(120));
    REQUIRE(there);
    CHECK_THAT(there->time.value(), WithinRel(2500 * std::log(100.5 / 0.5), 1e-6));
    CHECK_FALSE(when_at(body, at(20), in_si<Power>(99.5), celsius(120)));
    CHECK_FALSE(when_at(body, at(200), in_si<Power>(100.5), celsius(120)));
}

// Closed form: half a second of cooling from 200 degC in air of 20 degC, (T - 20) falls by
// exp(-0.5/2500).
TEST_CASE("half a second is followed too, and no time changes nothing") {
    const ThermalLump body = lump(5, 500, 1, 0, 20);
    const ThermalState then = after(body, at(200), Power(), in_si<Time>(0.5));
    CHECK_THAT(deg_c(then.temperature), WithinAbs(20 + 180 * std::exp(-0.5 / 2500), 1e-6));
    CHECK_THAT(then.time.value(), WithinAbs(0.5, 1e-12));
    CHECK(after(body, at(200), Power(), Time()).temperature == celsius(200));
}

TEST_CASE("half a degree up and half a degree down are ways too") {
    const ThermalLump body = lump(5, 500, 1, 0, 20);
    CHECK(when_at(body, at(119.5), in_si<Power>(200), celsius(120)));
    CHECK(when_at(body, at(120.5), Power(), celsius(120)));
    CHECK_FALSE(when_at(body, at(119.5), Power(), celsius(120)));
}
