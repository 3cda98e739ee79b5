#include <catch2/catch.hpp>

#include <ringfill/take/needs.hpp>
#include <ringfill/units/metric.hpp>

#include "fahrenheit.hpp"
#include "shop_for_tests.hpp"
#include "take/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

std::vector<Stick> sticks_of(std::initializer_list<double> degrees) {
    std::vector<Stick> sticks;
    for (const double one : degrees)
        sticks.push_back(
            {fmt::format("{} °C stick", one), UnitSystem::metric, celsius(one), "practice", true});
    return sticks;
}

StickUse use_of(std::optional<double> minimum, std::optional<double> maximum) {
    StickUse use{"pin", {}, {}};
    if (minimum)
        use.minimum = celsius(*minimum);
    if (maximum)
        use.maximum = celsius(*maximum);
    return use;
}

std::string picked(const StickUse& use, const std::vector<Stick>& sticks) {
    const StickPair pair = pick_sticks(use, sticks, UnitSystem::metric);
    return fmt::format("{} / {}{}", pair.minimum ? pair.minimum->name : "-",
                       pair.maximum ? pair.maximum->name : "-", pair.needs_thermometer ? " thermometer" : "");
}

} // namespace

TEST_CASE("the minimum's stick is the next at or above, the maximum's the next at or below") {
    const auto sticks = sticks_of({100, 150, 200, 250});
    CHECK(picked(use_of(101, 249), sticks) == "150 °C stick / 200 °C stick");
    CHECK(picked(use_of(150, 250), sticks) == "150 °C stick / 250 °C stick");
    CHECK(picked(use_of(151, 199), sticks) == "- / - thermometer");
    CHECK(picked(use_of(150, 150), sticks) == "- / - thermometer");
    CHECK(picked(use_of(251, 260), sticks) == "- / - thermometer"); // 250 would melt at the minimum
    CHECK(picked(use_of(251, {}), sticks) == "- / - thermometer");
    CHECK(picked(use_of(151, {}), sticks) == "200 °C stick / -");
    CHECK(picked(use_of({}, 99), sticks) == "- / - thermometer");
    CHECK(picked(use_of({}, 120), sticks) == "- / 100 °C stick");
    CHECK(picked(use_of({}, {}), sticks) == "- / -");
}

TEST_CASE("over all temperatures no maximum's stick is over the maximum, no minimum's under the minimum") {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::inch})
        for (int tenths = -600; tenths <= 13'000; ++tenths) {
            // Tenths of a degree of the scale, over the whole of -60 to 700 degC.
            const Temperature at =
                units == UnitSystem::metric ? celsius(tenths / 10.0) : fahrenheit(tenths / 10.0);
            StickPair pair = pick_sticks({"pin", {}, at}, testing::shop().sticks, units);
            pair.minimum = pick_sticks({"pin", at, {}}, testing::shop().sticks, units).minimum;
            if (pair.maximum && pair.maximum->rating.value.value() > at.value() + 1e-6)
                FAIL("maximum " << at.value() << " K gets " << pair.maximum->name);
            if (pair.minimum && pair.minimum->rating.value.value() < at.value() - 1e-6)
                FAIL("minimum " << at.value() << " K gets " << pair.minimum->name);
            if ((pair.minimum && pair.minimum->units != units) ||
                (pair.maximum && pair.maximum->units != units))
                FAIL("a stick of the other scale");
        }
}

TEST_CASE("two of each stick and one thermometer are taken, each with what it is for") {
    const auto sticks = sticks_of({100, 150, 200, 250});
    const auto lines =
        stick_needs({use_of(110, 210), {"lug", celsius(140), celsius(160)}}, sticks, UnitSystem::metric);
    REQUIRE(lines.size() == 3);
    CHECK(item(lines[0]) == "150 °C stick");
    CHECK(lines[0].supplied == 2);
    CHECK(lines[0].why == "melts when pin is warm enough (110 °C at least); two of each, one breaks");
    CHECK(item(lines[1]) == "200 °C stick");
    CHECK(item(lines[2]) == "contact thermometer");
    CHECK(lines[2].supplied == 1);
    CHECK(lines[2].reserve == 0);
    CHECK(lines[0].reserve == 1);
    CHECK(lines[2].why == "no pair of sticks serves lug: measure there"); // one stick cannot say both
    CHECK(stick_needs({use_of(110, 210)}, sticks, UnitSystem::metric).back().why ==
          "to check the sticks and to read between their ratings");
    CHECK(stick_needs({use_of({}, {})}, sticks, UnitSystem::metric).empty());
    CHECK(stick_needs({use_of(151, 199)}, sticks, UnitSystem::metric).back().why ==
          "no pair of sticks serves pin: measure there");
}

TEST_CASE("a stick that the shop does not stock is not offered") {
    auto sticks = sticks_of({100, 150, 200});
    sticks[1].stocked = false;
    CHECK(picked(use_of(101, 199), sticks) == "- / - thermometer");
    CHECK(picked(use_of({}, 199), sticks) == "- / 100 °C stick");
}
