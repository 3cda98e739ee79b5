#include <functional>
#include <string>

#include <catch2/catch.hpp>

#include "heat/known_balance.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// Why there is no balance once that is taken away; empty when there is one.
std::string reason_without(const std::function<void(Known&)>& take_away) {
    Known known = all_known();
    take_away(known);
    const FollowedHeat followed = known.follow();
    CHECK(followed.heat_balance.has_value() == followed.no_balance.empty());
    return followed.no_balance;
}

} // namespace

TEST_CASE("with all that it needs there is a balance, and each part that is not known is named") {
    CHECK(reason_without([](Known&) {}).empty());
    CHECK(reason_without([](Known& known) { known.bore.boss_diameter.reset(); }) ==
          "the job does not give boss_diameter");
    CHECK(reason_without([](Known& known) { known.build.wall.reset(); }) ==
          "the job does not give boss_diameter");
    CHECK(reason_without([](Known& known) { known.heat.preheat.minimum.reset(); }) ==
          "no preheat figure is known");
    CHECK(reason_without([](Known& known) { known.heat.preheat = Preheat(); }) ==
          "no preheat figure is known");
    CHECK(reason_without([](Known& known) { known.heat.preheat.interpass_max.reset(); }) ==
          "no interpass maximum is known");
    CHECK(reason_without([](Known& known) { known.heat.preheat.closed = true; }) ==
          "between its preheat minimum and its interpass maximum no ring could begin");
    CHECK(reason_without([](Known& known) { known.heat.voltage.reset(); }) ==
          "the job does not give the voltage");
    CHECK(reason_without([](Known& known) { known.heat.current.reset(); }) == "the current is not known");
    CHECK(reason_without([](Known& known) { known.heater.reset(); }) ==
          "the table of fuels does not have its heater");
    CHECK(reason_without([](Known& known) { known.passes.clear(); }) ==
          "it and the job have too many rings to be followed one by one");
}

// Of the sample 180 to 300 degC.
TEST_CASE("a window that is too narrow, air that is too warm and a boss that would melt are not followed") {
    const auto narrow = [](double maximum) {
        return reason_without(
            [&](Known& known) { known.heat.preheat.interpass_max->value = celsius(maximum); });
    };
    CHECK(narrow(195.001).empty());
    CHECK(narrow(194.9) == "between its preheat minimum and its interpass maximum there are less than 15 K");
    CHECK(reason_without([](Known& known) { known.ambient = celsius(281); }) ==
          "the air is less than 20 K under its interpass maximum");
    CHECK(reason_without([](Known& known) { known.ambient = celsius(279.9); }).empty());
    CHECK(reason_without([](Known& known) {
              known.bore.length = millimetres(2);
              known.bore.carry_off = Conductance();
              known.bore.boss_diameter = 2.0 * known.build.skim_radius + millimetres(2);
          }) == "its boss is so light that one ring would melt it");
}

// EN 1993-1-2, on which the other metals go, is of carbon steel alone.
TEST_CASE("metal that is no ferritic steel has no balance without its own specific heat and conductivity") {
    const auto austenitic = [](Known& known) {
        known.base.structure = "austenitic";
        known.base.specific_heat.reset();
    };
    CHECK(reason_without(austenitic) == "the table gives no specific heat of steel/A36");
    CHECK(reason_without([&](Known& known) {
              austenitic(known);
              known.base.specific_heat = {in_si<SpecificHeat>(500), "practice"};
              known.base.conductivity = {in_si<Conductivity>(15), "practice"};
          }).empty());
}
