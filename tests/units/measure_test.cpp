#include <catch2/catch.hpp>

#include <string>
#include <vector>

#include "measured_text.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

namespace {

struct Form {
    std::string text;
    Kind kind;
    double si; ///< worked out beside it from the definition of the unit
};

constexpr double in = 0.0254;

const std::vector<Form> forms = {
    // numbers
    {"90.4 mm", Kind::length, 90.4e-3},
    {"90.4mm", Kind::length, 90.4e-3},
    {"  90.4   mm  ", Kind::length, 90.4e-3},
    {"+90.4 mm", Kind::length, 90.4e-3},
    {"-0.4 mm", Kind::length, -0.4e-3},
    {"\u22120.4 mm", Kind::length, -0.4e-3},
    {"\u2013 0.4\u00A0mm", Kind::length, -0.4e-3},
    {".5 in", Kind::length, 0.5 * in},
    {"5. mm", Kind::length, 5e-3},
    {"0 mm", Kind::length, 0},
    {"007 mm", Kind::length, 7e-3},
    {"1.2e3 mm", Kind::length, 1.2},
    {"1.2E+3 mm", Kind::length, 1.2},
    {"12e-1mm", Kind::length, 1.2e-3},
    {"1e-400 mm", Kind::length, 0}, // too small to hold
    // fractions
    {"9/16 in", Kind::length, 9 * in / 16},
    {"9 / 16 in", Kind::length, 9 * in / 16},
    {"9\u204416 in", Kind::length, 9 * in / 16},
    {"3-9/16 in", Kind::length, 57 * in / 16},
    {"3 9/16 in", Kind::length, 57 * in / 16},
    {"3 - 9/16 in", Kind::length, 57 * in / 16},
    {"3\u20119/16 in", Kind::length, 57 * in / 16},
    {"3\u20139\u204416\u202Fin", Kind::length, 57 * in / 16},
    {"-3-9/16 in", Kind::length, -57 * in / 16}, // the minus holds for all of it
    {"3-9/16\"", Kind::length, 57 * in / 16},
    {"3 9/16\"", Kind::length, 57 * in / 16},
    {"3 9/16″", Kind::length, 57 * in / 16},
    {"3 9/16”", Kind::length, 57 * in / 16},
    {"3 9/16''", Kind::length, 57 * in / 16},
    {"3½ in", Kind::length, 3.5 * in},
    {"3½″", Kind::length, 3.5 * in},
    {"3-½ in", Kind::length, 3.5 * in},
    {"½ in", Kind::length, 0.5 * in},
    {"1/2 oz", Kind::mass, 0.45359237 / 32},
    // compound
    {"1 ft 6-1/2 in", Kind::length, 18.5 * in},
    {"1ft6-1/2in", Kind::length, 18.5 * in},
    {"1' 6\"", Kind::length, 18 * in},
    {"1'6\"", Kind::length, 18 * in},
    {"1'-6\"", Kind::length, 18 * in},
    {"1'-6 1/2\"", Kind::length, 18.5 * in},
    {"1′ 6½″", Kind::length, 18.5 * in},
    {"-1 ft 6 in", Kind::length, -18 * in},
    {"1 m 20 cm 3 mm", Kind::length, 1.203},
    {"1h30min", Kind::time, 5'400},
    {"1 h 30 min 5 s", Kind::time, 5'405},
    {"2 lb 3 oz", Kind::mass, (2 + 3.0 / 16) * 0.45359237},
    // temperatures are points, not rises
    {"4 degC", Kind::temperature, 277.15},
    {"\u22124 °C", Kind::temperature, 269.15},
    {"40 °F", Kind::temperature, (40 + 459.67) / 1.8},
    {"40°F", Kind::temperature, (40 + 459.67) / 1.8},
    {"-40 degF", Kind::temperature, 233.15},
    {"300 K", Kind::temperature, 300},
    // the rest
    {"10 %", Kind::share, 0.1},
    {"10%", Kind::share, 0.1},
    {"350 mm/min", Kind::speed, 0.35 / 60},
    {"15 L/min", Kind::volume_flow, 0.015 / 60},
    {"300 m3", Kind::volume, 300},
    {"0.9 kJ/mm", Kind::energy_per_length, 0.9e6},
    {"2 W/K", Kind::conductance, 2},
    {"125 rev/min", Kind::turning, 125.0 / 60},
    {"90 deg", Kind::angle, 1.5707963267948966},
};

} // namespace

TEST_CASE("a quantity is read in every form people write it") {
    for (const Form& form : forms) {
        INFO(form.text);
        CHECK_THAT(si_of(form.text, form.kind), WithinRel(form.si, 4e-15));
    }
}

TEST_CASE("the longest text that is read has 200 bytes") {
    CHECK_THAT(si_of("1" + std::string(197, ' ') + "mm", Kind::length), WithinRel(1e-3, 1e-15));
    CHECK(refused("1" + std::string(198, ' ') + "mm", Kind::length) ==
          "is too long for a quantity; write \"90.4 mm\" or \"3-9/16 in\"");
}
