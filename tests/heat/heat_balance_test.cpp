#include <catch2/catch.hpp>

#include "heat/heat_balance_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

/// The balance of a job held against the walk by fixed steps; returns the walk.
SteppedRun judged(const BalanceJob& job, double step = 0.01) {
    const Plan plan = job.plan();
    const BorePlan& bore = plan.bores.front();
    REQUIRE(bore.heat_balance);
    REQUIRE_FALSE(bore.heat_balance->plated);
    const HeatRun& run = bore.heat_balance->hot.run;
    const SteppedRun walk = FixedStep(job.stepped(), step).walk(rings_by_hand(bore));
    REQUIRE(walk.end == "done");
    CHECK(run.end == HeatEnd::done);
    CHECK(run.stops == walk.stops);
    CHECK(run.reheats == walk.reheats);
    CHECK_THAT(run.warm_up.value(), WithinRel(walk.warm_up, 0.002));
    CHECK_THAT(run.waiting.value(), WithinRel(walk.waited, 0.005) || WithinAbs(walk.waited, 0.1));
    CHECK_THAT(run.reheating.value(), WithinRel(walk.reheated, 0.01) || WithinAbs(walk.reheated, 0.1));
    CHECK_THAT(run.welding_ends.value(), WithinAbs(walk.welded, 0.2));
    CHECK_THAT(run.peak.value(), WithinAbs(walk.peak, 0.2));
    REQUIRE(run.cooling_to_finish);
    CHECK_THAT((*run.cooling_to_rough + *run.cooling_to_finish).value(), WithinRel(walk.cooling, 0.005));
    CHECK(bore.metal.breaks == walk.stops + walk.reheats);
    CHECK(bore.metal.starts == bore.layering.layers + bore.metal.breaks);
    return walk;
}

std::string reason(const BalanceJob& job) {
    const Plan plan = job.plan();
    CHECK_FALSE(plan.bores.front().heat_balance);
    CHECK(plan.bores.front().metal.breaks == 0);
    return plan.bores.front().no_balance;
}

} // namespace

TEST_CASE("a boss of some 15 kg stops as an independent integration says") {
    CHECK(judged({}).stops > 0);
    BalanceJob cold;
    cold.ambient = -30;
    CHECK(judged(cold).stops > 0);
    BalanceJob thin;
    thin.boss = 130;
    CHECK(judged(thin).stops > 5);
}

TEST_CASE("a boss of one ring a layer") {
    BalanceJob one;
    one.length = 4;
    one.maximum = 200;
    const Plan plan = one.plan();
    for (const Layer& layer : plan.bores.front().layers)
        CHECK(layer.rings == 1);
    CHECK(judged(one).stops == plan.bores.front().layering.layers - 1);
}

TEST_CASE("a boss of a tonne is warmed for hours and needs no stop") {
    BalanceJob big;
    big.boss = 800;
    big.length = 250;
    const SteppedRun walk = judged(big, 0.05);
    CHECK(walk.stops == 0);
    CHECK(walk.warm_up > 3 * 3600);
    CHECK(big.stepped().mass > 950);
}

TEST_CASE("a boss that loses more than the arc brings is reheated") {
    BalanceJob cold;
    cold.ambient = -30;
    cold.boss = 300;
    cold.minimum = 290;
    cold.maximum = 350;
    CHECK(judged(cold).reheats > 0);
}

TEST_CASE("a window of 15 K stops again and again, and one under it is not followed") {
    BalanceJob tight;
    tight.maximum = tight.minimum + 15;
    const Plan plan = tight.plan();
    CHECK(plan.bores.front().heat_balance->hot.run.stops > 5);
    CHECK(judged(tight).stops == plan.bores.front().heat_balance->hot.run.stops);
    tight.maximum = tight.minimum + 14;
    CHECK(reason(tight) == "between its preheat minimum and its interpass maximum no ring could begin");
}

TEST_CASE("a heater that is too small is told with the power needed, and burns nothing") {
    BalanceJob weak;
    weak.heater_kW = 2;
    CHECK(FixedStep(weak.stepped(), 0.05).walk({}).end == "heater");
    const Plan plan = weak.plan();
    const HeatBalance& balance = plan.bores.front().heat_balance.value();
    CHECK(balance.hot.run.end == HeatEnd::heater_too_small);
    CHECK(end_of(balance) == HeatEnd::heater_too_small);
    CHECK(balance.hot.run.stops == 0);
    CHECK(balance.hot.run.end_at == celsius(180));
    CHECK_FALSE(balance.warms_up());
    const SteppedBoss by_hand = weak.stepped();
    const double t = by_hand.minimum;
    const double a = by_hand.ambient;
    const double loss =
        by_hand.conductance * (t - a) + by_hand.emitting * 5.670374419e-8 * (t * t * t * t - a * a * a * a);
    CHECK_THAT(heater_needed(balance).value(), WithinRel(loss / 0.25, 1e-9));
    CHECK(heater_needed(balance) > balance.heater.power);
    for (const Need& line : plan.take)
        CHECK_THAT(item_text(line, plan.units), !Contains("propane"));
}

TEST_CASE("a boss that never cools ends in a clear answer") {
    BalanceJob hot;
    hot.ambient = 305; // over the maximum
    const Plan plan = hot.plan();
    const HeatBalance& balance = plan.bores.front().heat_balance.value();
    CHECK(FixedStep(hot.stepped(), 0.05).walk(rings_by_hand(plan.bores.front())).end == "never cools");
    CHECK(end_of(balance) == HeatEnd::never_cools);
    CHECK(balance.hot.run.stops == 0);
    CHECK(balance.hot.run.end_at == celsius(300));
    BalanceJob summer;
    summer.ambient = 40; // cools to 60 °C, not to 30 °C
    CHECK(end_of(summer.plan().bores.front().heat_balance.value()) == HeatEnd::never_cold);
}

TEST_CASE("what a balance cannot be worked out from leaves it out with its reason") {
    BalanceJob job;
    job.with_boss = false;
    CHECK(reason(job) == "the job does not give boss_diameter");
    job = {};
    job.with_voltage = false;
    CHECK(reason(job) == "the job does not give the voltage");
    job = {};
    job.maximum = 100;
    CHECK(reason(job) == "between its preheat minimum and its interpass maximum no ring could begin");
    job = {};
    job.travel = 2000;
    job.length = 9900;
    job.worn = 200;
    job.bore = R"("stock": "6 mm",)";
    job.boss = 240;
    CHECK(reason(job) == "it and the job have too many rings to be followed one by one");
    job = {};
    job.bore = R"("magnetic": false,)";
    CHECK_FALSE(reason(job).empty());
}

TEST_CASE("without a word on what carries heat off, two runs stand at the ends of what may be") {
    BalanceJob open;
    open.sink = "";
    const Plan plan = open.plan();
    const BorePlan& bore = plan.bores.front();
    const HeatBalance& balance = bore.heat_balance.value();
    REQUIRE(balance.plated);
    CHECK(balance.hot.boss.sink.value() == 0);
    CHECK(balance.plated->plates == std::vector<Length>{*bore.build.wall});
    CHECK(balance.plated->boss.sink ==
          plate_sink(millimetres(90), *bore.build.wall, balance.metal.conductivity));
    CHECK(balance.hot.run.waiting > balance.plated->run.waiting);
    CHECK(balance.plated->run.warm_up_heat > balance.hot.run.warm_up_heat);
    CHECK(balance.breaks() == balance.hot.run.stops + balance.plated->run.reheats);
    BalanceJob plated;
    plated.sink = R"("attached": [ { "thickness": "25 mm" } ],)";
    CHECK_FALSE(plated.plan().bores.front().heat_balance->plated);
}

TEST_CASE("a hold and slow cooling are in the heat of the heater") {
    BalanceJob held;
    held.approved = R"(, "post_heat": { "temperature": "320 degC", "time": "2 h" })";
    const Plan plan = held.plan();
    const HeatBalance& balance = plan.bores.front().heat_balance.value();
    const HeatRun& run = balance.hot.run;
    CHECK(run.post_heating.value() > 7200);
    const SteppedBoss by_hand = held.stepped();
    const double t = 320 + 273.15;
    const double a = by_hand.ambient;
    const double loss =
        by_hand.conductance * (t - a) + by_hand.emitting * 5.670374419e-8 * (t * t * t * t - a * a * a * a);
    const double reaching = run.post_heating.value() - 7200;
    CHECK_THAT(run.post_heat_heat.value(), WithinRel(loss * 7200 + by_hand.heater * reaching, 1e-6));
    CHECK(balance.heater_heat() == run.warm_up_heat + run.reheat_heat + run.post_heat_heat + run.slow_heat);
}
