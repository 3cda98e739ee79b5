#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

#include <gsl/gsl_sf_bessel.h>

#include <ringfill/heat/boss.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

WornBore bore_of() {
    WornBore bore;
    bore.length = millimetres(100);
    bore.boss_diameter = millimetres(180);
    return bore;
}

Build build_of() {
    Build build;
    build.skim_radius = millimetres(47);
    build.wall = millimetres(43);
    return build;
}

HotMetal steel() {
    Base base;
    base.structure = "ferritic";
    base.density = {in_si<Density>(7850), "practice"};
    return hot_metal(base).value();
}

} // namespace

// The scientific library GSL is the judge of the Bessel functions.
TEST_CASE("the sink of a plate is that of the endless annular fin") {
    for (const double radius : {0.01, 0.09, 0.5, 5.0})
        for (const double plate : {0.002, 0.025, 0.1})
            for (const double lambda : {15.0, 49.0}) {
                CAPTURE(radius, plate, lambda);
                const double x = radius * std::sqrt(2 * 15 / (lambda * plate));
                const double expected = 2 * std::numbers::pi * lambda * plate * x *
                                        gsl_sf_bessel_K1_scaled(x) / gsl_sf_bessel_K0_scaled(x);
                CHECK_THAT(
                    plate_sink(in_si<Length>(radius), in_si<Length>(plate), in_si<Conductivity>(lambda))
                        .value(),
                    WithinRel(expected, 1e-9));
            }
    // So large a fin that both functions vanish: the limit of their ratio is 1.
    const double x = 1e5 * std::sqrt(2 * 15 / (49 * 1e-3));
    CHECK_THAT(plate_sink(in_si<Length>(1e5), millimetres(1), in_si<Conductivity>(49)).value(),
               WithinRel(2 * std::numbers::pi * 49 * 1e-3 * x, 1e-6));
}

// By hand: R_b 90 mm, r_s 47 mm, L 100 mm, 7,850 kg/m³.
TEST_CASE("mass and surface of a boss are those of a ring") {
    const Boss boss = boss_of(bore_of(), build_of(), steel(), {});
    const double face = std::numbers::pi * (0.09 * 0.09 - 0.047 * 0.047);
    CHECK_THAT(boss.mass.value(), WithinRel(7850 * face * 0.1, 1e-12));
    CHECK_THAT(boss.surface.value(),
               WithinRel(2 * std::numbers::pi * (0.09 + 0.047) * 0.1 + 2 * face, 1e-12));
    CHECK(boss.heated == boss.mass);
    CHECK(boss.sink.value() == 0);
}

TEST_CASE("plates add the ring they are warmed along and carry heat off, unless the job knows better") {
    WornBore bore = bore_of();
    const Boss alone = boss_of(bore, build_of(), steel(), {});
    const Boss plated = boss_of(bore, build_of(), steel(), {millimetres(25), millimetres(10)});
    CHECK_THAT(plated.heated.value() - plated.mass.value(),
               WithinRel(7850 * std::numbers::pi * (0.165 * 0.165 - 0.09 * 0.09) * 0.035, 1e-9));
    CHECK(plated.mass == alone.mass);
    CHECK_THAT(plated.sink.value(),
               WithinRel((plate_sink(millimetres(90), millimetres(25), steel().conductivity) +
                          plate_sink(millimetres(90), millimetres(10), steel().conductivity))
                             .value(),
                         1e-12));
    bore.carry_off = in_si<Conductance>(2);
    CHECK(boss_of(bore, build_of(), steel(), {millimetres(25)}).sink.value() == 2);
}

// Incropera, example 5.4 (read in a companion): h 500, half thickness 40 mm, k 63.9 give 0.313; the
// definition h L/k.
TEST_CASE("the Biot number is h L/k with h of convection and radiation") {
    const Boss boss = boss_of(bore_of(), build_of(), steel(), {});
    const double t = 523.15;
    const double a = 293.15;
    const double h = 10 + 0.8 * 5.670374419e-8 * (t * t + a * a) * (t + a);
    const double length = boss.mass.value() / 7850 / boss.surface.value();
    CHECK_THAT(biot_number(boss, steel(), celsius(250), celsius(20)), WithinRel(h * length / 49.005, 1e-9));
}

TEST_CASE("metal whose specific heat nobody gives has none") {
    Base base;
    base.structure = "austenitic";
    CHECK_FALSE(hot_metal(base));
    base.specific_heat = Sourced<SpecificHeat>{in_si<SpecificHeat>(500), "practice"};
    CHECK_FALSE(hot_metal(base));
    base.conductivity = Sourced<Conductivity>{in_si<Conductivity>(15), "practice"};
    CHECK(hot_metal(base)->specific_heat(celsius(200)).value() == 500);
    base.structure = "ferritic";
    CHECK(hot_metal(base)->conductivity.value() == 15);
}
