#include <catch2/catch.hpp>

#include <string>

#include "measured_text.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("a number without a unit is told how to get one") {
    CHECK(refused("90.4", Kind::length) == "has no unit; write \"90.4 mm\" or \"90.4 in\"");
    CHECK(refused("3-9/16", Kind::length) == "has no unit; write \"3-9/16 mm\" or \"3-9/16 in\"");
    CHECK(refused("180", Kind::current) == "has no unit; write \"180 A\"");
    CHECK(refused("4", Kind::temperature) == "has no unit; write \"4 degC\"");
    CHECK(refused("10", Kind::share) == "has no unit; write \"10 %\"");
}

TEST_CASE("the bare number of a length comes back with its sign, so that messages can convert it") {
    const auto bare = [](std::string_view text) {
        return std::get<NotMeasured>(measure(text, Kind::length)).bare_length;
    };
    CHECK(bare("90.4") == 90.4);
    CHECK(bare("-0.5") == -0.5);
    CHECK(bare("3-1/2") == 3.5);
    CHECK_FALSE(bare("90.4 furlong"));
    CHECK_FALSE(bare("mm"));
}

TEST_CASE("what holds no number says so") {
    CHECK(refused("", Kind::length) == "is empty; write \"90.4 mm\" or \"3-9/16 in\"");
    CHECK(refused(" \u00A0\t", Kind::length) == "is empty; write \"90.4 mm\" or \"3-9/16 in\"");
    CHECK(refused("mm", Kind::length) == "does not begin with a number; write \"90.4 mm\" or \"3-9/16 in\"");
    CHECK(refused(".", Kind::current) == "does not begin with a number; write \"180 A\"");
    CHECK(refused("-", Kind::current) == "does not begin with a number; write \"180 A\"");
    CHECK(refused("--5 A", Kind::current) == "does not begin with a number; write \"180 A\"");
    CHECK(refused("Ø90 mm", Kind::length) ==
          "does not begin with a number; write \"90.4 mm\" or \"3-9/16 in\"");
    CHECK(refused("inf mm", Kind::length) ==
          "does not begin with a number; write \"90.4 mm\" or \"3-9/16 in\"");
    CHECK(refused("nan A", Kind::current) == "does not begin with a number; write \"180 A\"");
    CHECK(refused("/16 in", Kind::length) ==
          "does not begin with a number; write \"90.4 mm\" or \"3-9/16 in\"");
}

TEST_CASE("an unknown unit is answered with the nearest or with those there are") {
    CHECK(refused("90.4 milimetre", Kind::length) ==
          "has the unit \"milimetre\", which is not known; known here: mm, cm, m, um, in, thou, ft");
    CHECK(refused("90.4 mn", Kind::length) ==
          "has the unit \"mn\", which is not known; did you mean \"mm\"?");
    CHECK(refused("3 inchs", Kind::length) ==
          "has the unit \"inchs\", which is not known; did you mean \"inch\"?");
    CHECK(refused("90.4 MM", Kind::length) ==
          "has the unit \"MM\", which is not known; did you mean \"mm\"?");
    CHECK(refused("180 amps", Kind::current) == "has the unit \"amps\", which is not known; known here: A");
    CHECK(refused("4 celsius", Kind::temperature) ==
          "has the unit \"celsius\", which is not known; known here: degC, degF, K");
    CHECK(refused("15 L/mn", Kind::volume_flow) ==
          "has the unit \"L/mn\", which is not known; did you mean \"L/min\"?");
    CHECK(refused("2 x 3 mm", Kind::length) ==
          "has the unit \"x\", which is not known; known here: mm, cm, m, um, in, thou, ft");
    CHECK(refused("1e mm", Kind::length) ==
          "has the unit \"e\", which is not known; known here: mm, cm, m, um, in, thou, ft");
    CHECK(refused("0x10 mm", Kind::length) ==
          "has the unit \"x10\", which is not known; known here: mm, cm, m, um, in, thou, ft");
}

TEST_CASE("a unit of another kind is named as such") {
    CHECK(refused("5 kg", Kind::length) ==
          "has the unit \"kg\", which does not measure a length; write \"90.4 mm\" or \"3-9/16 in\"");
    CHECK(refused("1 m3", Kind::length) ==
          "has the unit \"m3\", which does not measure a length; write \"90.4 mm\" or \"3-9/16 in\"");
    CHECK(refused("90 mm", Kind::temperature) ==
          "has the unit \"mm\", which does not measure a temperature; write \"180 degC\" or \"350 degF\"");
    CHECK(refused("8 mm", Kind::speed) ==
          "has the unit \"mm\", which does not measure a speed; write \"350 mm/min\" or \"14 in/min\"");
    CHECK(refused("40 ° F", Kind::temperature) ==
          "has the unit \"°\", which does not measure a temperature; write \"180 degC\" or \"350 degF\"");
    CHECK(refused("2 kW", Kind::conductance) ==
          "has the unit \"kW\", which does not measure a heat flow per degree; write \"2 W/K\"");
}

TEST_CASE("a comma is not a decimal point") {
    CHECK(refused("90,4 mm", Kind::length) ==
          "has a comma; write decimals with a point and no digit groups: \"1250.5 mm\"");
    CHECK(refused("1,250.5 mm", Kind::length) ==
          "has a comma; write decimals with a point and no digit groups: \"1250.5 mm\"");
    CHECK(refused("19,5 V", Kind::voltage) ==
          "has a comma; write decimals with a point and no digit groups: \"1250.5 V\"");
}

TEST_CASE("two numbers before the unit are not guessed at") {
    CHECK(refused("1 250 mm", Kind::length) ==
          "has two numbers before its unit; write one number: \"90.4 mm\" or \"3-9/16 in\"");
    CHECK(refused("3.5 9/16 in", Kind::length) ==
          "has two numbers before its unit; write one number: \"90.4 mm\" or \"3-9/16 in\"");
    CHECK(refused("90-92 mm", Kind::length) ==
          "has two numbers before its unit; write one number: \"90.4 mm\" or \"3-9/16 in\"");
}

TEST_CASE("a fraction over 0 is refused") {
    for (const std::string text : {"3/0 in", "3 1/0 in", "3-1/0 in", "3 / 0 in", "3-1/00\""}) {
        INFO(text);
        CHECK(refused(text, Kind::length) == "has a fraction over 0; write \"90.4 mm\" or \"3-9/16 in\"");
    }
}

TEST_CASE("text after the unit is refused") {
    for (const std::string text : {"90.4 mm deep", "90.4 mm 5", "90.4 mm mm", "1 in 1 ft", "1 ft 1 ft",
                                   "5' -3\" x", "1 ft 6 kg", "90.4 mm -", "1 ft -"}) {
        INFO(text);
        CHECK(refused(text, Kind::length) ==
              "goes on after the unit; write one quantity: \"90.4 mm\" or \"3-9/16 in\"");
    }
    CHECK(refused("4 degC 5 K", Kind::temperature) ==
          "goes on after the unit; write one quantity: \"180 degC\" or \"350 degF\"");
    CHECK(refused("1 h 30", Kind::time) == "goes on after the unit; write one quantity: \"20 min\"");
}

TEST_CASE("a number that cannot be held is too large") {
    CHECK(refused("1e400 mm", Kind::length) == "is too large; write \"90.4 mm\" or \"3-9/16 in\"");
    CHECK(refused("-1e400 mm", Kind::length) == "is too large; write \"90.4 mm\" or \"3-9/16 in\"");
    CHECK(refused("1e305 kJ/mm", Kind::energy_per_length) == "is too large; write \"0.9 kJ/mm\"");
    CHECK(refused("1e400", Kind::length) == "is too large; write \"90.4 mm\" or \"3-9/16 in\"");
}

TEST_CASE("what is quoted from the text cannot disturb a terminal") {
    CHECK(refused("5 \x1B[2J", Kind::current) ==
          "has the unit \"\uFFFD[2J\", which is not known; known here: A");
    CHECK(refused("5\n", Kind::current) == "has the unit \"\uFFFD\", which is not known; known here: A");
    CHECK(refused("5 \xFF", Kind::current) == "has the unit \"\uFFFD\", which is not known; known here: A");
}
