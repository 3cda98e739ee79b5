#include <algorithm>

#include <catch2/catch.hpp>

#include "heat/heat_balance_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

const HeatBalance& balance_of(const Plan& plan) {
    return plan.bores.front().heat_balance.value();
}

std::string reason(const BalanceJob& job) {
    const Plan plan = job.plan();
    CHECK_FALSE(plan.bores.front().heat_balance);
    CHECK(plan.bores.front().metal.breaks == 0);
    return plan.bores.front().no_balance;
}

} // namespace

TEST_CASE("a balance runs what the job says of boss, heater, plates and pauses") {
    BalanceJob job;
    job.sink = R"("attached": [ { "thickness": "25 mm", "depth": "20 mm", "reach": "300 mm",
        "wrapped": true }, { "thickness": "12 mm" } ],)";
    job.procedure = R"("step_over": "20 s",)";
    const Plan plan = job.plan();
    const BorePlan& bore = plan.bores.front();
    const HeatRunSettings& settings = balance_of(plan).hot.settings;
    CHECK_FALSE(balance_of(plan).plated);
    CHECK(settings.boss.bore_radius == bore.build.skim_radius);
    CHECK(settings.boss.outer_radius == millimetres(job.boss / 2));
    CHECK(settings.boss.pitch == bore.bead.pitch);
    REQUIRE(settings.boss.plates.size() == 2);
    CHECK(settings.boss.plates[0].middle == millimetres(20));
    CHECK(settings.boss.plates[0].reach == millimetres(300));
    CHECK(settings.boss.plates[0].wrapped);
    CHECK_THAT(mm(settings.boss.plates[1].middle), WithinRel(job.length / 2, 1e-12));
    CHECK(settings.boss.plates[1].reach == usual_reach(millimetres(12)));
    CHECK(settings.step_over.value() == 20);
    // solid wire is cleaned for 0.3 min in a minute of arc, here longer than the 240 s of a layer
    double longest_layer = 0;
    for (const Layer& layer : bore.layers)
        longest_layer = std::max(longest_layer, layer.arc.value());
    REQUIRE(0.3 * longest_layer > 240);
    CHECK_THAT(settings.cleaning.value(), WithinRel(0.3 * longest_layer, 1e-9));
    CHECK(settings.blanket == millimetres(25));
    CHECK(settings.skin == celsius(300)); // the interpass maximum
    CHECK_THAT(settings.arc.value(), WithinRel(0.8 * 18.5 * 150, 1e-12));
    CHECK_THAT(settings.heater.value(), WithinRel(7500, 1e-12));
    BalanceJob by_hand = job;
    by_hand.sink = R"("carry_off": "2 W/K", "attached": [ { "thickness": "25 mm" } ],)";
    const Plan carried = by_hand.plan();
    CHECK(balance_of(carried).hot.settings.boss.plates.empty());
    CHECK(balance_of(carried).hot.settings.boss.carry_off.value() == 2);
    CHECK_FALSE(balance_of(carried).plated);
}

TEST_CASE("rests and reheats are starts of the arc, dwells are none") {
    const Plan plan = BalanceJob().plan();
    const BorePlan& bore = plan.bores.front();
    const HeatRun& run = balance_of(plan).hot.run;
    CHECK(run.told_pausing > run.pausing);
    CHECK(bore.metal.breaks == run.rests + run.reheats);
    CHECK(bore.metal.starts == bore.layering.layers + bore.metal.breaks);
    BalanceJob thin;
    thin.boss = 125;
    thin.maximum = 230;
    const Plan rested = thin.plan();
    REQUIRE(balance_of(rested).hot.run.rests > 3);
    CHECK(rested.bores.front().metal.breaks == balance_of(rested).breaks());
}

TEST_CASE("a boss of a tonne is warmed for hours") {
    BalanceJob big;
    big.boss = 800;
    big.length = 250;
    const Plan plan = big.plan();
    const HeatRun& run = balance_of(plan).hot.run;
    CHECK(run.boss > in_si<Mass>(950));
    CHECK(run.warm_up.time.value() > 3 * 3600);
    CHECK(run.rests == 0);
}

TEST_CASE("a window of 15 K dwells or rests again and again, and one under it is not followed") {
    BalanceJob tight;
    tight.maximum = tight.minimum + 15;
    tight.boss = 125;
    CHECK(balance_of(tight.plan()).hot.run.rests > 5);
    tight.maximum = tight.minimum + 14;
    CHECK(reason(tight) == "between its preheat minimum and its interpass maximum no ring could begin");
}

TEST_CASE("a heater that is too small is told with the power needed, and burns nothing") {
    BalanceJob weak;
    weak.heater_kW = 1.5;
    const Plan plan = weak.plan();
    const HeatBalance& balance = balance_of(plan);
    CHECK(end_of(balance) == HeatEnd::heater_too_small);
    CHECK(balance.hot.run.end_at == celsius(180));
    CHECK_FALSE(balance.warms_up());
    CHECK(heater_needed(balance) > balance.heater.power);
    for (const Need& line : plan.take)
        CHECK((!Contains("propane").match(item_text(line, plan.units)) || is_unknown(line)));
    weak.heater_kW = 1.001 * heater_needed(balance).value() / 1e3;
    CHECK(balance_of(weak.plan()).warms_up());
}

TEST_CASE("finishing waits for 30 degC, or 5 K over the air") {
    BalanceJob summer;
    summer.ambient = 40;
    const Plan plan = summer.plan();
    CHECK(balance_of(plan).hot.settings.finish_below == celsius(45));
    CHECK(end_of(balance_of(plan)) == HeatEnd::done);
    CHECK(balance_of(BalanceJob().plan()).hot.settings.finish_below == celsius(30));
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
    job.ambient = 58;
    job.minimum = 60;
    job.maximum = 75;
    CHECK(reason(job) == "the air is less than 20 K under its interpass maximum");
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
    const HeatBalance& balance = balance_of(plan);
    REQUIRE(balance.plated);
    CHECK(balance.hot.settings.boss.plates.empty());
    CHECK(balance.plated->plates == std::vector<Length>{*bore.build.wall});
    CHECK(balance.plated->settings.boss.plates.front().reach == usual_reach(*bore.build.wall));
    CHECK(balance.hot.run.pausing > balance.plated->run.pausing);
    CHECK(balance.plated->run.warm_up_heat > balance.hot.run.warm_up_heat);
    CHECK(balance.breaks() == balance.hot.run.rests + balance.plated->run.reheats);
    // One plate, wherever it stands, lies between the two.
    BalanceJob plated;
    plated.sink = R"("attached": [ { "thickness": "15 mm" } ],)";
    const Plan with_one = plated.plan();
    const HeatRun& one = balance_of(with_one).hot.run;
    CHECK(one.warm_up_heat > balance.hot.run.warm_up_heat);
    CHECK(one.warm_up_heat < balance.plated->run.warm_up_heat);
    CHECK(*one.bare.to_rough < *balance.hot.run.bare.to_rough);
    CHECK(*one.bare.to_rough > *balance.plated->run.bare.to_rough);
}

TEST_CASE("a hold and slow cooling are in the heat of the heater") {
    BalanceJob held;
    held.approved = R"(, "post_heat": { "temperature": "320 degC", "time": "2 h" })";
    const Plan plan = held.plan();
    const HeatBalance& balance = balance_of(plan);
    const HeatRun& run = balance.hot.run;
    CHECK(run.post_heating.value() > 7200);
    CHECK(run.post_heat_heat > Energy());
    CHECK(balance.heater_heat() ==
          run.warm_up_heat + run.reheat_heat + run.post_heat_heat + run.cooling().heat);
    CHECK_THAT(total_time(balance, plan.bores.front().metal.arc)->value(),
               WithinRel((run.warm_up.time + run.delay + plan.bores.front().metal.arc + run.told_pausing +
                          run.resting + run.reheating + run.post_heating + *run.cooling().to_rough +
                          *run.cooling().to_finish)
                             .value(),
                         1e-12));
}
