#include <catch2/catch.hpp>

#include <ringfill/heat/arc_energy.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

// 1 kJ/in is 1000 J over 25.4 mm, by definition of the inch.
constexpr double kilojoule_an_inch = 1000 / 0.0254;

EnergyPerLength energy(double amperes, double volts, double inches_a_minute) {
    return arc_energy(in_si<Voltage>(volts), in_si<Current>(amperes),
                      in_si<Speed>(inches_a_minute * 0.0254 / 60));
}

} // namespace

// EN 1011-1 table 1, as printed in two training texts (an institute's question page and its slides of 2006;
// both read).
TEST_CASE("thermal efficiency is that of EN 1011-1 table 1") {
    CHECK(thermal_efficiency("121") == 1.0); // submerged arc
    CHECK(thermal_efficiency("111") == 0.8); // stick electrode
    CHECK(thermal_efficiency("135") == 0.8); // MAG
    CHECK(thermal_efficiency("131") == 0.8); // MIG
    CHECK(thermal_efficiency("136") == 0.8); // gas-shielded cored wire
    CHECK(thermal_efficiency("137") == 0.8); // cored wire in inert gas
    CHECK(thermal_efficiency("138") == 0.8); // metal-cored wire
    CHECK(thermal_efficiency("114") == 0.8); // self-shielded cored wire
    CHECK(thermal_efficiency("141") == 0.6); // TIG
    CHECK(thermal_efficiency("15") == 0.6);  // plasma
    CHECK_FALSE(thermal_efficiency("311").has_value());
    CHECK_FALSE(thermal_efficiency("").has_value());
}

// Worked examples printed in two exam-preparation texts (read): 25 in in 2 min and 35 in in 4 min.
TEST_CASE("arc energy is that of printed worked examples") {
    CHECK_THAT(energy(325, 29, 12.5).value() / kilojoule_an_inch, WithinAbs(45.24, 0.005));
    CHECK_THAT(energy(425, 39, 8.75).value() / kilojoule_an_inch, WithinAbs(113.65, 0.01)); // printed cut off
}

TEST_CASE("heat input is the efficient share of arc energy") {
    CHECK_THAT(kj_mm(heat_input(0.8, in_si<EnergyPerLength>(1e6))), WithinRel(0.8, 1e-12));
    CHECK_THAT(kj_mm(in_si<EnergyPerLength>(kilojoule_an_inch)), WithinRel(1 / 25.4, 1e-12));
}
