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

EnergyPerLength energy(double amperes, double volts, double inches_a_minute, double efficiency = 1) {
    return heat_input(efficiency, in_si<Voltage>(volts), in_si<Current>(amperes),
                      in_si<Speed>(inches_a_minute * 0.0254 / 60));
}

} // namespace

// EN 1011-1 table 1, as printed in two training texts (an institute's question page and its slides of 2006;
// both read).
TEST_CASE("thermal efficiency is that of EN 1011-1 table 1") {
    CHECK(thermal_efficiency("manual_metal_arc") == 0.8);  // 111
    CHECK(thermal_efficiency("self_shielded_arc") == 0.8); // 114
    CHECK(thermal_efficiency("gas_metal_arc") == 0.8);     // 131, 135
    CHECK(thermal_efficiency("flux_cored_arc") == 0.8);    // 136
    CHECK(thermal_efficiency("metal_cored_arc") == 0.8);   // 138
    CHECK(thermal_efficiency("gas_tungsten_arc") == 0.6);  // 141
    CHECK(thermal_efficiency("torch_brazing") == 0);       // no arc
}

// Worked examples printed in two exam-preparation texts (read): 25 in in 2 min and 35 in in 4 min.
TEST_CASE("arc energy is that of printed worked examples") {
    CHECK_THAT(energy(325, 29, 12.5).value() / kilojoule_an_inch, WithinAbs(45.24, 0.005));
    CHECK_THAT(energy(425, 39, 8.75).value() / kilojoule_an_inch, WithinAbs(113.65, 0.01)); // printed cut off
}

TEST_CASE("heat input is the efficient share of arc energy") {
    CHECK_THAT(energy(325, 29, 12.5, 0.8).value(), WithinRel(0.8 * energy(325, 29, 12.5).value(), 1e-12));
    CHECK_THAT(kj_mm(in_si<EnergyPerLength>(kilojoule_an_inch)), WithinRel(1 / 25.4, 1e-12));
}
