#include <catch2/catch.hpp>

#include <cmath>

#include "caution/told.hpp"
#include "heat/heat_balance_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Lines told_of(const BalanceJob& job, UnitSystem units = UnitSystem::metric) {
    const Job read = job_from(job.text());
    const Plan plan = ringfill::plan(read, shop());
    REQUIRE(plan.bores.front().heat_balance);
    return told_by(balance_rules, read.bores.front(), plan.bores.front(), units);
}

} // namespace

TEST_CASE("a balance that ends well warns of nothing") {
    CHECK(told_of({}).empty());
}

TEST_CASE("a heater that is too small is told with the power needed and the power given") {
    BalanceJob weak;
    weak.heater_kW = 1.5;
    const HeatBalance balance = weak.plan().bores.front().heat_balance.value();
    const double needed = std::ceil(heater_needed(balance).value() / 100 - 1e-9) / 10;
    CHECK(told_of(weak) ==
          Lines{fmt::format(
              "eye | before | yes | Bring a larger heater or shelter the boss: this one does not bring it to "
              "180 °C in time. Its fuel is left out of what to take, rests are counted as far as it goes. | "
              "1.5 kW are given off, and more than {:.1f} kW are needed, at 25 % into the metal | own",
              needed)});
    weak.sink = "";
    CHECK(told_of(weak, UnitSystem::inch).front().find("with a plate of 1.685 in on the boss") !=
          std::string::npos);
}

TEST_CASE("an outside that must stay cooler than the bore gets is told") {
    BalanceJob held_back;
    std::string text = held_back.text();
    const std::string kind = "\"kind\": \"propane\",";
    text.replace(text.find(kind), kind.size(), kind + " \"skin\": \"190 degC\",");
    const Job job = job_from(text);
    const Plan plan = ringfill::plan(job, shop());
    REQUIRE(end_of(*plan.bores.front().heat_balance) == HeatEnd::skin_in_the_way);
    const Lines told = told_by(balance_rules, job.bores.front(), plan.bores.front(), UnitSystem::metric);
    REQUIRE(told.size() == 1);
    CHECK(told[0].starts_with("eye | before | yes | Warm it for longer, wrap it meanwhile, or allow a hotter "
                              "outside (heater.skin): as "
                              "it is the bore does not come to 180 °C in six hours. Its fuel is left out of "
                              "what to take. | the outside "
                              "is kept under 190 °C, and the bore is "));
}

TEST_CASE("air too warm for roughing is told") {
    BalanceJob hot;
    hot.ambient = 60;
    CHECK(told_of(hot) == Lines{"eye | after | yes | Do not bore yet: the boss does not cool to 60 °C. | the "
                                "air is at 60 °C, or ten days are not enough | practice"});
}

TEST_CASE("a boss outside the range that was tried, two runs far apart and long dwells are notes") {
    const auto notes = [](const BalanceJob& job) {
        return balance_notes("eye", job.plan().bores.front().heat_balance.value(), UnitSystem::metric);
    };
    BalanceJob large;
    large.boss = 700;
    REQUIRE(!notes(large).empty());
    CHECK(notes(large).front().starts_with("eye: a bore of "));
    CHECK(notes(large).front().find(
              "lies outside what its heat balance was tried on (bores of 50.0 mm to 160.0 "
              "mm, walls of 15.0 mm to 190.0 mm): measure before each ring.") != std::string::npos);
    BalanceJob open;
    open.sink = "";
    const auto told = notes(open);
    REQUIRE(!told.empty());
    CHECK(told.front().starts_with(
        "eye: say first what plates stand on the boss (attached): its warm-up takes "));
    HeatBalance balance = BalanceJob{}.plan().bores.front().heat_balance.value();
    balance.hot.run.told_pausing = balance.hot.run.pausing + in_si<Time>(59);
    CHECK(balance_notes("eye", balance, UnitSystem::metric).empty());
    balance.hot.run.told_pausing = balance.hot.run.pausing + in_si<Time>(300);
    CHECK(balance_notes("eye", balance, UnitSystem::metric) ==
          Lines{"eye: the dwells told are 5 min longer in all than the boss needs, since a torch is set to "
                "few of "
                "them."});
}
