#include <catch2/catch.hpp>

#include <ringfill/report/json/json.hpp>

#include "heat/heat_balance_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;
using Catch::WithinRel;

namespace {

const Need* line_of(const Plan& plan, const std::string& begin) {
    for (const Need& line : plan.take)
        if (item_text(line, plan.units).starts_with(begin))
            return &line;
    return nullptr;
}

} // namespace

TEST_CASE("fuel is the heat of every bore over efficiency and net heating value") {
    BalanceJob job;
    job.bore = R"("count": 3,)";
    const Plan plan = job.plan();
    const HeatBalance& balance = plan.bores.front().heat_balance.value();
    const Need* fuel = line_of(plan, "fuel propane");
    REQUIRE(fuel);
    CHECK_THAT(fuel->need, WithinRel(3 * balance.heater_heat().value() / (0.25 * 46.35e6), 1e-9));
    CHECK(line_of(plan, "insulating blanket")->need == 1);
    CHECK(line_of(plan, "contact thermometer"));
    CHECK(line_of(plan, "welding set 150 A"));
}

TEST_CASE("an electric heater burns no fuel and draws its power") {
    BalanceJob job;
    std::string text = job.text();
    const std::string kind = "\"kind\": \"propane\"";
    text.replace(text.find(kind), kind.size(), "\"kind\": \"resistance\"");
    const Plan plan = ringfill::plan(job_from(text), shop());
    const HeatBalance& balance = plan.bores.front().heat_balance.value();
    CHECK_FALSE(line_of(plan, "fuel"));
    CHECK_THAT(line_of(plan, "power supply")->need, WithinRel(18.5 * 150 / 800 + 30, 1e-9));
    const double arc = 18.5 * 150 * plan.bores.front().metal.arc.value();
    const double boring = 1500 * plan.bores.front().boring.cutting_time.value(); // a usual drive of 1.5 kW
    CHECK_THAT(line_of(plan, "generator fuel")->need,
               WithinRel((arc / 0.8 + balance.heater_heat().value() / 0.25 + boring) / (3 * 3.6e6), 1e-9));
}

TEST_CASE("rests take wire and gas of their own") {
    BalanceJob thin; // it must rest between rings
    thin.boss = 125;
    thin.maximum = 230;
    const Plan plan = thin.plan();
    BalanceJob deaf = thin;
    deaf.with_voltage = false;
    const Plan without = deaf.plan();
    const int breaks = plan.bores.front().metal.breaks;
    REQUIRE(breaks > 0);
    const Deposition& laid = plan.bores.front().deposition;
    CHECK_THAT((plan.totals.wire - without.totals.wire).value(),
               WithinRel(breaks * 0.1 * laid.linear_mass.value(), 1e-9));
    // 12 L/min over 1 s before and 2 s after, 5 % more.
    CHECK_THAT((plan.totals.gas - without.totals.gas).value() * 1e3, WithinRel(breaks * 0.6 * 1.05, 1e-9));
}

TEST_CASE("what a balance takes for granted is assumed once and only where there is one") {
    BalanceJob job;
    std::string text = job.text();
    const std::string heater = R"("heater": { "kind": "propane", "power": "30 kW", "efficiency": 0.25 },)";
    REQUIRE(text.find(heater) != std::string::npos);
    text.erase(text.find(heater), heater.size());
    const std::string site = R"("site": { "ambient": "4 degC" },)";
    text.erase(text.find(site), site.size());
    std::string told;
    for (const Assumed& one : ringfill::plan(job_from(text), shop()).assumed)
        told += one.path + "=" + one.value + "\n";
    CHECK_THAT(told, Contains("heater.kind=propane\nheater.power=30 kW\nheater.efficiency=0.25\n"
                              "site.ambient=20 °C\n"));
    job.with_voltage = false;
    for (const Assumed& one : job.plan().assumed)
        CHECK_THAT(one.path, !Contains("heater"));
}
