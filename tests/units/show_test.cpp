#include <catch2/catch.hpp>

#include <ringfill/units/show.hpp>

using namespace ringfill;

// Expected texts: the value times the exact factor of its unit (1 in = 25.4 mm, 1 lb = 0.45359237 kg),
// rounded by hand.

namespace {

constexpr auto metric = UnitSystem::metric;
constexpr auto inch = UnitSystem::inch;

} // namespace

TEST_CASE("lengths, wires and paths") {
    CHECK(show(millimetres(93.4), metric) == "93.4 mm");
    CHECK(show(millimetres(93.4), inch) == "3.677 in");
    CHECK(show(millimetres(1234.56), metric) == "1234.6 mm");
    CHECK(show_wire(millimetres(1.0), metric) == "1.0 mm");
    CHECK(show_wire(millimetres(1.2), metric) == "1.2 mm");
    CHECK(show_wire(millimetres(1.143), metric) == "1.14 mm");
    CHECK(show_wire(millimetres(1.143), inch) == "0.045 in");
    CHECK(show_distance(in_si<Length>(12.5), metric) == "12.5 m");
    CHECK(show_distance(in_si<Length>(12.5), inch) == "41.0 ft");
    CHECK(show_distance(in_si<Length>(1'250), metric) == "1250 m");
}

TEST_CASE("cutting speeds, finished sizes and roughness") {
    CHECK(show_cutting_speed(in_si<Speed>(1), metric) == "60 m/min");
    CHECK(show_cutting_speed(in_si<Speed>(1), inch) == "197 ft/min"); // 60/0.3048
    CHECK(show_fine(millimetres(90.0871), metric) == "90.087 mm");
    CHECK(show_fine(millimetres(90.087), inch) == "3.5467 in");
    CHECK(show_micro(millimetres(0.003516), metric) == "3.52 µm");
    CHECK(show_micro(millimetres(0.00625), inch) == "246 µin");
}

TEST_CASE("areas and volumes") {
    CHECK(show(in_si<Area>(17.4e-6), metric) == "17.4 mm²");
    CHECK(show(in_si<Area>(17.4e-6), inch) == "0.027 in²");
    CHECK(show(in_si<Volume>(1.2404), metric) == "1240 L");
    CHECK(show(in_si<Volume>(1.2404), inch) == "43.8 ft³");
}

TEST_CASE("masses and flows of mass") {
    CHECK(show(in_si<Mass>(5.62), metric) == "5.62 kg");
    CHECK(show(in_si<Mass>(5.62), inch) == "12.39 lb");
    CHECK(show(in_si<Mass>(0.0234), metric) == "23 g");
    CHECK(show(in_si<Mass>(0.0234), inch) == "0.8 oz");
    CHECK(show(in_si<Mass>(0.1), metric) == "0.10 kg");
    CHECK(show(Mass(), metric) == "0 g");
    CHECK(show(in_si<MassFlow>(2.81 / 3'600), metric) == "2.81 kg/h");
    CHECK(show(in_si<MassFlow>(2.81 / 3'600), inch) == "6.19 lb/h");
}

TEST_CASE("speeds and flows of gas") {
    CHECK(show(in_si<Speed>(0.35 / 60), metric) == "350 mm/min");
    CHECK(show(in_si<Speed>(0.35 / 60), inch) == "13.8 in/min");
    CHECK(show_feed(in_si<Speed>(8.0 / 60), metric) == "8.0 m/min");
    CHECK(show_feed(in_si<Speed>(8.0 / 60), inch) == "315 in/min");
    CHECK(show(in_si<VolumeFlow>(0.015 / 60), metric) == "15.0 L/min");
    CHECK(show(in_si<VolumeFlow>(0.015 / 60), inch) == "31.8 ft³/h");
}

TEST_CASE("angles, turning and current") {
    CHECK(show(in_si<Angle>(0.5235987755982988)) == "30°");
    CHECK(show_turning(in_si<Turning>(1.19 / 60)) == "1.19 rev/min");
    CHECK(show_turning(in_si<Turning>(125.0 / 60)) == "125 rev/min");
    CHECK(show(in_si<Current>(180.4)) == "180 A");
}

TEST_CASE("temperatures are points on their scale") {
    CHECK(show(in_si<Temperature>(277.15), metric) == "4 °C");
    CHECK(show(in_si<Temperature>(277.15), inch) == "39 °F");
    CHECK(show(in_si<Temperature>(233.15), metric) == "-40 °C");
    CHECK(show(in_si<Temperature>(233.15), inch) == "-40 °F");
    CHECK(show(in_si<Temperature>(273.15), inch) == "32 °F");
    CHECK(show(in_si<Temperature>(0), metric) == "-273 °C");
    CHECK(show(in_si<Temperature>(453.15), inch) == "356 °F");
}

TEST_CASE("times pass from seconds to minutes and hours without a 60") {
    CHECK(show(in_si<Time>(0)) == "0 s");
    CHECK(show(in_si<Time>(45)) == "45 s");
    CHECK(show(in_si<Time>(59.4)) == "59 s");
    CHECK(show(in_si<Time>(59.6)) == "1 min");
    CHECK(show(in_si<Time>(89)) == "1 min");
    CHECK(show(in_si<Time>(91)) == "2 min");
    CHECK(show(in_si<Time>(12 * 60)) == "12 min");
    CHECK(show(in_si<Time>(59 * 60 + 29)) == "59 min");
    CHECK(show(in_si<Time>(59 * 60 + 31)) == "1 h 00 min");
    CHECK(show(in_si<Time>(85 * 60)) == "1 h 25 min");
    CHECK(show(in_si<Time>(2 * 3'600 - 20)) == "2 h 00 min");
    CHECK(show(in_si<Time>(100 * 3'600.0)) == "100 h 00 min");
}

TEST_CASE("three digits are kept where rounding carries over") {
    const auto path = [](double metres) { return show_distance(in_si<Length>(metres), metric); };
    CHECK(path(99.94) == "99.9 m");
    CHECK(path(99.96) == "100 m");
    CHECK(path(9.994) == "9.99 m");
    CHECK(path(9.996) == "10.0 m");
    CHECK(path(0.9994) == "0.999 m");
    CHECK(path(0.9996) == "1.00 m");
    CHECK(path(0.0004) == "0.000 m");
    CHECK(path(0) == "0.000 m");
}

TEST_CASE("a zero has no minus") {
    CHECK(show(millimetres(-0.00001), metric) == "0.0 mm");
    CHECK(show(millimetres(-0.06), metric) == "-0.1 mm");
    CHECK(show_distance(in_si<Length>(-0.00001), metric) == "0.000 m");
    CHECK(show(in_si<Temperature>(272.65), metric) == "0 °C"); // half a degree of frost
    CHECK(show(in_si<Temperature>(272.6), metric) == "-1 °C");
    CHECK(show(in_si<Angle>(-0.001)) == "0°");
}

TEST_CASE("a minimum is rounded up and a maximum down, to 5 degrees Celsius or 10 Fahrenheit") {
    const auto celsius = [](double degrees) { return in_si<Temperature>(degrees + 273.15); };
    CHECK(show_minimum(celsius(180), UnitSystem::metric) == "180 °C");
    CHECK(show_minimum(celsius(180.1), UnitSystem::metric) == "185 °C");
    CHECK(show_maximum(celsius(184.9), UnitSystem::metric) == "180 °C");
    CHECK(show_minimum(celsius(-3), UnitSystem::metric) == "0 °C");
    CHECK(show_maximum(celsius(-3), UnitSystem::metric) == "-5 °C");
    CHECK(show_minimum(celsius(100), UnitSystem::inch) == "220 °F"); // 212 °F
    CHECK(show_maximum(celsius(100), UnitSystem::inch) == "210 °F");
}
