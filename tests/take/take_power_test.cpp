#include <catch2/catch.hpp>

#include <ringfill/take/needs.hpp>

#include "take/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

PowerUse power_use(const std::string& procedure, double amperes, double volts, double minutes) {
    return {procedure, in_si<Current>(amperes), in_si<Voltage>(volts), in_si<Time>(60 * minutes)};
}

MainsUse mains(double arc_MJ, double heating_MJ = 0, std::optional<double> heater_kW = {}) {
    MainsUse use;
    use.arc = in_si<Energy>(arc_MJ * 1e6);
    use.heating = in_si<Energy>(heating_MJ * 1e6);
    if (heater_kW)
        use.electric_heater = in_si<Power>(*heater_kW * 1e3);
    return use;
}

constexpr double exact = 1e-9; // the rounding of a double

} // namespace

// Worked by hand: the run's share of 10 min, in steps of 5 %. The period of 10 min is from EN IEC 60974-1,
// from memory.
TEST_CASE("the duty is the run's share of ten minutes, rounded up to five per cent") {
    const auto duty = [](double minutes) { return duty_pct(in_si<Time>(60 * minutes)); };
    CHECK(duty(0) == 5);
    CHECK(duty(0.5) == 5);
    CHECK(duty(0.51) == 10);
    CHECK(duty(6) == 60);
    CHECK(duty(6.01) == 65);
    CHECK(duty(9.5) == 95);
    CHECK(duty(9.51) == 100);
    CHECK(duty(10) == 100);
    CHECK(duty(250) == 100);
}

TEST_CASE("one welding set serves the highest current at the highest duty") {
    const auto lines =
        power_needs({power_use("root", 220.4, 24, 4.1), power_use("fill", 180, 26, 12)}, mains(0), 0.1);
    REQUIRE(lines.size() == 2);
    CHECK(item(lines[0]) == "welding set 221 A at 100 % duty");
    CHECK(unit(lines[0]) == "pieces");
    CHECK(lines[0].need == 1);
    CHECK(lines[0].supplied == 1);
    CHECK(lines[0].source == "IEC60974-1");
    CHECK(lines[0].why ==
          "rated at least so in periods of 10 min: 220 A for root, with up to 4 min of arc in 10 min: 45 % "
          "duty; 180 A for fill, with up to 10 min of arc in 10 min: 100 % duty");
}

// Worked by hand: 25 V x 200 A = 5 kW in the arc, 6.25 kW drawn at 80 %; 23 V x 210 A is less. With 10.8 kW
// of pads 17.05 kW.
TEST_CASE("the supply gives the strongest arc and the electric heater together") {
    const std::vector<PowerUse> uses{power_use("root", 210, 23, 4), power_use("fill", 200, 25, 4)};
    const Need alone = power_needs(uses, mains(0), 0.1)[1];
    CHECK(item(alone) == "power supply");
    CHECK(unit(alone) == "kW");
    CHECK_THAT(alone.need, WithinAbs(6.25, exact));
    CHECK(alone.reserve == 0);
    CHECK(alone.supplied == 7);
    CHECK_THAT(alone.spare, WithinAbs(0.75, exact));
    CHECK(alone.pack_known);
    CHECK(cover_in_words(alone) == "1 x 7 kW supply");
    CHECK(alone.why == "25 V and 200 A in the arc of fill are 5 kW, of a set that passes on 80 %");
    const Need heated = power_needs(uses, mains(0, 0, 10.8), 0.1)[1];
    CHECK_THAT(heated.need, WithinAbs(17.05, exact));
    CHECK(heated.supplied == 18);
    CHECK(heated.why ==
          "25 V and 200 A in the arc of fill are 5 kW, of a set that passes on 80 %; and 10.8 kW "
          "of heater, as if together");
}

TEST_CASE("a demand of whole kilowatts is not rounded up further") {
    const Need line = power_needs({power_use("fill", 200, 24, 4)}, mains(0), 0.1)[1];
    CHECK_THAT(line.need, WithinAbs(6, exact)); // 4.8 kW / 0.8
    CHECK(line.supplied == 6);
}

// Worked by hand: 86.4 MJ in the arc are 24 kWh, 30 kWh drawn at 80 %; 108 MJ of heating are 30 kWh. At 3 kWh
// a litre 20 L, and 10 % on top.
TEST_CASE("a generator burns a litre for three kilowatt hours") {
    const auto lines = power_needs({power_use("fill", 200, 25, 4)}, mains(86.4, 108, 10.8), 0.1);
    REQUIRE(lines.size() == 3);
    CHECK(item(lines[2]) == "generator fuel");
    CHECK(unit(lines[2]) == "L");
    CHECK_THAT(lines[2].need, WithinAbs(20, exact));
    CHECK_THAT(lines[2].reserve, WithinAbs(2, exact));
    CHECK(lines[2].supplied == 22);
    CHECK_THAT(lines[2].spare, WithinAbs(0, exact));
    CHECK(cover_in_words(lines[2]) == "1 x 22 L in cans");
    CHECK(lines[2].why ==
          "only where there are no mains: 60 kWh for arc, heater and boring bar at 3 kWh to a litre, idling "
          "not counted; on top 10 %");
    REQUIRE(lines[2].working.size() == 4);
    CHECK(lines[2].working[0].formula == "(W_arc/e + W_heating + W_boring)/g");
}

TEST_CASE("without a procedure no power is taken") {
    CHECK(power_needs({}, mains(10), 0.1).empty());
}

// By hand: the working multiplies the single set it needs by 0.
TEST_CASE("no welding set is kept in reserve") {
    const Need line = power_needs({power_use("root", 200, 24, 4)}, mains(0), 0.1)[0];
    REQUIRE(line.working.size() >= 2);
    CHECK(line.reserve == 0);
    CHECK(line.working[0].value == 1);
    CHECK(line.working[0].inputs.at(0).values() == std::vector<double>{1});
    REQUIRE(line.working[1].inputs.size() == 1);
    CHECK(line.working[1].inputs[0].values() == std::vector<double>{line.need});
}

// By hand, with the US gallon of 3.785411784 L (NIST SP 811, B.8, exact): 22 L are 5.81 gallons, six cans of
// one; 3 kWh to a litre are 11.36 kWh to a gallon.
TEST_CASE("a generator's fuel is told in whole gallons where the user counts in them") {
    const Need line =
        power_needs({power_use("fill", 200, 25, 4)}, mains(86.4, 108, 10.8), 0.1, UnitSystem::inch)[2];
    CHECK_THAT(line.need, WithinAbs(20, exact));
    CHECK_THAT(line.supplied, WithinAbs(6 * 3.785411784, 1e-9));
    CHECK(cover_in_words(line) == "1 x 6 gal in cans");
    CHECK_THAT(line.why, Catch::Contains("60 kWh for arc, heater and boring bar at 11.4 kWh to a gallon"));
}

// By hand: the period of 10 min is 600 s, a step of 5 % of it 30 s; a hundredth of a second more is the next
// step.
TEST_CASE("what is a little over a step takes the next") {
    CHECK(duty_pct(in_si<Time>(300.01)) == 55);
    const Need set = power_needs({power_use("root", 200.0005, 24, 4)}, mains(0), 0.1)[0];
    CHECK(item(set) == "welding set 201 A at 40 % duty");
    const Need supply = power_needs({power_use("root", 200.01, 24, 4)}, mains(0), 0.1)[1]; // 6.0003 kW
    CHECK(supply.supplied == 7);
}

TEST_CASE("a small boring bar is told beside the arc") {
    MainsUse small = mains(0);
    small.bar_drive = in_si<Power>(800);
    const Need line = power_needs({power_use("root", 200, 25, 4)}, small, 0.1)[1];
    CHECK_THAT(line.need, WithinAbs(6.25, exact));
    CHECK_THAT(line.why, Catch::EndsWith("; the boring bar at another time 0.8 kW"));
}

// By hand: 8 MJ in the arc are 10 drawn at 80 %, and 5 of heating and 1 of boring beside them.
TEST_CASE("what is drawn from the mains is arc, heating and boring") {
    MainsUse use = mains(8, 5);
    use.boring = in_si<Energy>(1e6);
    CHECK_THAT(use.drawn().value(), WithinAbs(16e6, 1e-3));
}

// By hand: 10.8 MJ are 3 kWh, a litre.
TEST_CASE("boring alone takes a generator's fuel too") {
    MainsUse use = mains(0);
    use.boring = in_si<Energy>(10.8e6);
    const auto lines = power_needs({power_use("fill", 200, 25, 4)}, use, 0);
    REQUIRE(lines.size() == 3);
    CHECK_THAT(lines[2].need, WithinAbs(1, exact));
}
