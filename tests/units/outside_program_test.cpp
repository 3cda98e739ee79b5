#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

#include <fmt/format.h>

#include <ringfill/units/unit.hpp>

#include "measured_text.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

// An independent judge: Debian's program `units` (GNU Units, package `units`), with its own table of
// definitions.

namespace {

/// What a command prints, in one text. Fails the test when the command fails, so also when it is not there.
std::string output_of(const std::string& command) {
    FILE* pipe = ::popen(command.c_str(), "r");
    REQUIRE(pipe);
    std::string text;
    for (int c = std::fgetc(pipe); c != EOF; c = std::fgetc(pipe))
        text += static_cast<char>(c);
    REQUIRE(::pclose(pipe) == 0);
    return text;
}

/// The number the program gives for one expression in a unit.
double outside(const std::string& expression, const std::string& unit) {
    const std::string said =
        output_of(fmt::format("LC_ALL=C units --terse -o %.17g '{}' '{}' 2>&1", expression, unit));
    INFO(expression << " in " << unit << ": " << said);
    char* end = nullptr;
    const double number = std::strtod(said.c_str(), &end);
    REQUIRE(end != said.c_str());
    REQUIRE(std::string(end) == "\n");
    return number;
}

/// One of our units, how that program calls it, and what it calls the SI unit.
struct Pair {
    std::string ours;
    Kind kind;
    std::string theirs;
    std::string si;
};

const std::vector<Pair> pairs = {
    {"mm", Kind::length, "mm", "m"},
    {"cm", Kind::length, "cm", "m"},
    {"m", Kind::length, "m", "m"},
    {"um", Kind::length, "micrometer", "m"},
    {"µm", Kind::length, "micrometer", "m"},
    {"μm", Kind::length, "micrometer", "m"},
    {"in", Kind::length, "in", "m"},
    {"inch", Kind::length, "inch", "m"},
    {"inches", Kind::length, "inches", "m"},
    {"\"", Kind::length, "in", "m"},
    {"″", Kind::length, "in", "m"},
    {"”", Kind::length, "in", "m"},
    {"''", Kind::length, "in", "m"},
    {"thou", Kind::length, "mil", "m"},
    {"ft", Kind::length, "ft", "m"},
    {"'", Kind::length, "ft", "m"},
    {"′", Kind::length, "ft", "m"},
    {"’", Kind::length, "ft", "m"},
    {"m3", Kind::volume, "m^3", "m^3"},
    {"m³", Kind::volume, "m^3", "m^3"},
    {"L", Kind::volume, "L", "m^3"},
    {"l", Kind::volume, "l", "m^3"},
    {"mm3", Kind::volume, "mm^3", "m^3"},
    {"cm3", Kind::volume, "cm^3", "m^3"},
    {"ft3", Kind::volume, "ft^3", "m^3"},
    {"ft³", Kind::volume, "ft^3", "m^3"},
    {"in3", Kind::volume, "in^3", "m^3"},
    {"kg", Kind::mass, "kg", "kg"},
    {"g", Kind::mass, "g", "kg"},
    {"lb", Kind::mass, "lb", "kg"},
    {"lbs", Kind::mass, "lbs", "kg"},
    {"oz", Kind::mass, "oz", "kg"},
    {"mm/min", Kind::speed, "mm/min", "m/s"},
    {"m/min", Kind::speed, "m/min", "m/s"},
    {"cm/min", Kind::speed, "cm/min", "m/s"},
    {"mm/s", Kind::speed, "mm/s", "m/s"},
    {"m/s", Kind::speed, "m/s", "m/s"},
    {"in/min", Kind::speed, "in/min", "m/s"},
    {"ipm", Kind::speed, "in/min", "m/s"},
    {"ft/min", Kind::speed, "ft/min", "m/s"},
    {"L/min", Kind::volume_flow, "L/min", "m^3/s"},
    {"l/min", Kind::volume_flow, "l/min", "m^3/s"},
    {"m3/h", Kind::volume_flow, "m^3/hr", "m^3/s"},
    {"ft3/h", Kind::volume_flow, "ft^3/hr", "m^3/s"},
    {"cfh", Kind::volume_flow, "ft^3/hr", "m^3/s"},
    {"kg/h", Kind::mass_flow, "kg/hr", "kg/s"},
    {"g/min", Kind::mass_flow, "g/min", "kg/s"},
    {"lb/h", Kind::mass_flow, "lb/hr", "kg/s"},
    {"A", Kind::current, "A", "A"},
    {"V", Kind::voltage, "V", "V"},
    {"kW", Kind::power, "kW", "W"},
    {"W", Kind::power, "W", "W"},
    {"W/K", Kind::conductance, "W/K", "W/K"},
    {"kJ/mm", Kind::energy_per_length, "kJ/mm", "J/m"},
    {"kJ/cm", Kind::energy_per_length, "kJ/cm", "J/m"},
    {"J/mm", Kind::energy_per_length, "J/mm", "J/m"},
    {"kJ/in", Kind::energy_per_length, "kJ/in", "J/m"},
    {"deg", Kind::angle, "degree", "radian"},
    {"°", Kind::angle, "degree", "radian"},
    {"rad", Kind::angle, "radian", "radian"},
    {"rev/min", Kind::turning, "rev/min", "rev/s"},
    {"rpm", Kind::turning, "rpm", "rev/s"},
    {"rev/s", Kind::turning, "rev/s", "rev/s"},
    {"min", Kind::time, "min", "s"},
    {"h", Kind::time, "hr", "s"},
    {"s", Kind::time, "s", "s"},
    {"%", Kind::share, "percent", "1"},
};

constexpr std::array kinds = {Kind::share,   Kind::length,      Kind::volume,   Kind::mass,
                              Kind::speed,   Kind::volume_flow, Kind::current,  Kind::voltage,
                              Kind::power,   Kind::conductance, Kind::angle,    Kind::energy_per_length,
                              Kind::turning, Kind::time,        Kind::mass_flow};

} // namespace

TEST_CASE("every unit agrees with an outside program over a grid of values") {
    for (const Pair& pair : pairs)
        for (const std::string number : {"1", "0.045", "3.5625", "1e6"}) {
            INFO(number << ' ' << pair.ours);
            CHECK_THAT(si_of(number + ' ' + pair.ours, pair.kind),
                       WithinRel(outside(fmt::format("{} ({})", number, pair.theirs), pair.si), 1e-12));
        }
}

TEST_CASE("fractions and compound forms agree with an outside program") {
    CHECK_THAT(si_of("3-9/16 in", Kind::length), WithinRel(outside("(3+9|16) in", "m"), 1e-12));
    CHECK_THAT(si_of("1 ft 6-1/2 in", Kind::length), WithinRel(outside("1 ft + 6.5 in", "m"), 1e-12));
    CHECK_THAT(si_of("2 lb 3 oz", Kind::mass), WithinRel(outside("2 lb + 3 oz", "kg"), 1e-12));
    CHECK_THAT(si_of("1h30min", Kind::time), WithinRel(outside("1 hr + 30 min", "s"), 1e-12));
}

TEST_CASE("temperatures agree with an outside program") {
    for (const std::string number : {"-40", "0", "4", "39.2", "180", "350", "1500"}) {
        INFO(number);
        for (const std::string ours : {"degC", "°C", "C", "℃"})
            CHECK_THAT(si_of(number + ' ' + ours, Kind::temperature),
                       WithinRel(outside(fmt::format("tempC({})", number), "tempK"), 1e-12));
        for (const std::string ours : {"degF", "°F", "F", "℉"})
            CHECK_THAT(si_of(number + ' ' + ours, Kind::temperature),
                       WithinRel(outside(fmt::format("tempF({})", number), "tempK"), 1e-12));
    }
    CHECK_THAT(si_of("300 K", Kind::temperature), WithinRel(outside("tempK(300)", "K"), 1e-12));
}

TEST_CASE("no unit escapes the comparison") {
    for (const Kind kind : kinds)
        for (const std::string& symbol : symbols_of(kind)) {
            INFO(symbol);
            CHECK(std::any_of(pairs.begin(), pairs.end(),
                              [&](const Pair& pair) { return pair.ours == symbol && pair.kind == kind; }));
        }
    CHECK(symbols_of(Kind::temperature) ==
          std::vector<std::string>{"degC", "°C", "C", "℃", "degF", "°F", "F", "℉", "K"});
}
