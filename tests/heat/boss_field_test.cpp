#include <catch2/catch.hpp>

#include <array>
#include <cmath>

#include <boost/numeric/odeint.hpp>

#include "heat/boss_cases.hpp"

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;
using testing::constant_metal;
using testing::plain_steel;
using testing::shape_of;

namespace {

void put_all_at(const BossEquation& equation, BossField& field, double kelvin) {
    for (double& at : field.kelvin)
        at = kelvin;
    for (double& at : field.content)
        at = equation.metal().e(kelvin);
}

BossLoad wrapped_all_over() {
    BossLoad load;
    load.wrapped_outside = load.wrapped_bore = load.wrapped_plates = true;
    return load;
}

} // namespace

TEST_CASE("what goes into a boss is stored in it or lost, to rounding") {
    for (const bool steel : {true, false}) {
        CAPTURE(steel);
        BossShape shape = shape_of(180, 95, 100);
        shape.plates = {{millimetres(25), millimetres(30), millimetres(400)}};
        BossEquation equation(boss_mesh(shape), steel ? plain_steel() : constant_metal(500, 15), celsius(-5),
                              3.6);
        BossWalk walk(equation);
        const double begin = equation.content(walk.field());
        BossLoad load;
        load.heater = 7500;
        walk.put(load);
        walk.advance(400);
        load.arc = 2400;
        load.band = {0.031, 0.0363};
        walk.put(load);
        walk.advance(47.3);
        walk.put({});
        walk.advance(1000);
        walk.put(wrapped_all_over());
        walk.advance(20'000);
        const double given = walk.heater_heat() + walk.arc_heat();
        CHECK_THAT(walk.heater_heat(), WithinRel(7500 * 447.3, 1e-12));
        CHECK_THAT(walk.arc_heat(), WithinRel(2400 * 47.3, 1e-12));
        CHECK(walk.field().lost > 0.3 * given);
        CHECK_THAT(equation.content(walk.field()) - begin + walk.field().lost, WithinRel(given, 1e-10));
    }
}

TEST_CASE("a thin boss cools as one lump of metal does") {
    const HotMetal copper_like = constant_metal(400, 390);
    BossEquation equation(boss_mesh(shape_of(60, 44, 60)), copper_like, celsius(15), 3.6);
    const BossMesh& mesh = equation.mesh();
    BossField field = equation.at_ambient();
    put_all_at(equation, field, celsius(420).value());
    double mass = 0;
    for (const double volume : mesh.volume)
        mass += 8000 * volume;
    double now = 0;
    for (; now < 2000; now += 10)
        equation.step(field, {}, 10);
    std::array<double, 1> lump{celsius(420).value()};
    const auto cools = [&](const std::array<double, 1>& t, std::array<double, 1>& slope, double) {
        const double air = celsius(15).value();
        double loss = 0;
        for (const BareFace& face : mesh.faces)
            loss += face.area * (10 * (t[0] - air) +
                                 face.emissivity * 5.670374419e-8 * (std::pow(t[0], 4) - std::pow(air, 4)));
        slope[0] = -loss / (mass * 400);
    };
    boost::numeric::odeint::integrate(cools, lump, 0.0, 2000.0, 1.0);
    CHECK(lump[0] < celsius(150).value());
    CHECK_THAT(mean_boss(mesh, field), WithinAbs(lump[0], 0.3));
}

TEST_CASE("a cell a pitch or half as many, or a step half as long, moves little") {
    const auto bore_after = [](double pitch_mm, double step) {
        BossEquation equation(boss_mesh(shape_of(180, 95, 120, pitch_mm)), plain_steel(), celsius(10), 3.6);
        BossField field = equation.at_ambient();
        BossLoad load;
        load.heater = 7000;
        for (double now = 0; now < 240; now += step)
            equation.step(field, load, step);
        load = {};
        load.arc = 2300;
        load.band = {0.03, 0.06};
        for (double now = 0; now < 120; now += step)
            equation.step(field, load, step);
        for (double now = 0; now < 60; now += step)
            equation.step(field, {}, step);
        return std::pair(mean_boss(equation.mesh(), field), bore_at(equation.mesh(), field, 0.045));
    };
    const auto [mean, band] = bore_after(7.5, 10);
    const auto [mean_finer, band_finer] = bore_after(15, 10);
    const auto [mean_slower, band_slower] = bore_after(7.5, 5);
    CHECK_THAT(mean_finer, WithinAbs(mean, 0.2));
    CHECK_THAT(band_finer, WithinAbs(band, 2));
    CHECK_THAT(mean_slower, WithinAbs(mean, 0.2));
    CHECK_THAT(band_slower, WithinAbs(band, 1));
}

TEST_CASE("heat content is the integral of the specific heat") {
    const HeatCurves steel = heat_curves(plain_steel());
    double sum = 0;
    const double begin = celsius(-30).value();
    constexpr double step = 0.01;
    for (int i = 0; i < 125'000; ++i) {
        sum += steel.c(begin + (i + 0.5) * step) * step;
        if (i % 9'973 == 0)
            CHECK_THAT(steel.e(begin + (i + 1) * step) - steel.e(begin), WithinAbs(sum, 1e-4 * sum + 1e-3));
    }
    CHECK_THAT(steel.e(celsius(20).value()), WithinAbs(0, 1e-6));
}
