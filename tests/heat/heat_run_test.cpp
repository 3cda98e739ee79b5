#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <random>

#include <ringfill/heat/heat_run.hpp>
#include <ringfill/units/metric.hpp>

#include "heat/fixed_step.hpp"

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

/// A boss of so many kilograms in air of 10 °C, held between 150 and 250 °C.
HeatRunSettings boss_of(double kg) {
    HeatRunSettings settings;
    settings.boss.mass = in_si<Mass>(kg);
    settings.boss.conductance = in_si<Conductance>(1.2);
    settings.boss.emitting = in_si<Area>(0.09);
    settings.boss.ambient = celsius(10);
    settings.heated = settings.boss.mass;
    settings.minimum = celsius(150);
    settings.maximum = celsius(250);
    settings.arc = in_si<Power>(2200);
    settings.heater = in_si<Power>(6000);
    settings.rough_below = celsius(60);
    settings.finish_below = celsius(30);
    return settings;
}

std::vector<RingPass> rings(std::size_t count, double seconds) {
    return {{"bore", 1, std::vector<Time>(count, in_si<Time>(seconds))},
            {"bore", 2, std::vector<Time>(count, in_si<Time>(seconds))}};
}

int count_of(const HeatRun& run, HeatStage stage) {
    return static_cast<int>(std::count_if(run.steps.begin(), run.steps.end(),
                                          [&](const HeatStep& step) { return step.stage == stage; }));
}

/// Stops and waits by a fixed step of 10 ms, apart from the library.
std::pair<int, double> by_fixed_step(const HeatRunSettings& s, const std::vector<RingPass>& passes) {
    const testing::SteppedBoss boss{
        s.boss.mass.value(),     s.heated.value(),       s.boss.conductance.value(),
        s.boss.emitting.value(), s.boss.ambient.value(), s.minimum.value(),
        s.maximum.value(),       s.arc.value(),          s.heater.value()};
    const testing::SteppedRun walk = testing::FixedStep(boss, 0.01).walk(passes);
    return {walk.stops, walk.waited};
}

} // namespace

TEST_CASE("stops and waits are those of an independent integration by a fixed step") {
    for (const double kg : {4.0, 8.0, 15.0}) {
        CAPTURE(kg);
        const HeatRunSettings settings = boss_of(kg);
        const auto passes = rings(20, 45);
        const HeatRun run = heat_run(settings, passes);
        const auto [stops, waited] = by_fixed_step(settings, passes);
        CHECK(run.end == HeatEnd::done);
        CHECK(run.stops == stops);
        CHECK(stops > 0);
        CHECK_THAT(run.waiting.value(), WithinRel(waited, 0.02));
        CHECK(run.reheats == 0);
    }
}

TEST_CASE("the energy balance closes and no ring begins outside the limits, whatever the boss") {
    std::mt19937_64 random(9);
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    int finished = 0;
    for (int i = 0; i < 10'000; ++i) {
        HeatRunSettings s = boss_of(std::exp(between(std::log(0.5), std::log(1000))));
        s.boss.conductance = in_si<Conductance>(between(0.1, 20));
        s.boss.emitting = in_si<Area>(between(0.005, 0.5));
        s.boss.ambient = celsius(between(-30, 40));
        s.minimum = celsius(between(20, 300));
        s.maximum = in_si<Temperature>(s.minimum.value() + between(0, 150));
        s.arc = in_si<Power>(between(500, 5000));
        const HeatRun run = heat_run(s, rings(static_cast<std::size_t>(between(1, 12)), between(5, 90)));
        for (const HeatStep& step : run.steps)
            if ((step.stage == HeatStage::stop && step.to.value() > s.maximum.value() + 1e-5) ||
                (step.stage == HeatStage::reheat && step.to.value() < s.minimum.value() - 1e-5))
                FAIL("case " << i << ": a break ends outside the limits");
        if (run.end != HeatEnd::done)
            continue;
        ++finished;
        const double in = (run.arc_heat + run.reheat_heat).value();
        const double kept = heat_content(s.boss, run.welding_begins, run.welding_ends).value();
        const double out = run.lost.value() + kept;
        if (std::fabs(in - out) > 1e-3 * std::max({in, std::fabs(kept), std::fabs(run.lost.value())}))
            FAIL("case " << i << ": " << in << " J in, " << out << " J kept and lost");
    }
    CHECK(finished > 1'000);
}

TEST_CASE("one ring on a large boss needs no stop, interpass equal to preheat stops before each ring") {
    CHECK(heat_run(boss_of(1000), {{"bore", 1, {in_si<Time>(30)}}}).stops == 0);
    HeatRunSettings tight = boss_of(10);
    tight.maximum = tight.minimum;
    const HeatRun run = heat_run(tight, {{"bore", 1, std::vector<Time>(5, in_si<Time>(30))}});
    CHECK(run.end == HeatEnd::done);
    CHECK(run.stops == 4); // not after the last ring
    CHECK(count_of(run, HeatStage::stop) == 4);
}

TEST_CASE("a cold boss is reheated, and a small heater or warm air ends in a clear answer") {
    HeatRunSettings cold = boss_of(3);
    cold.boss.conductance = in_si<Conductance>(30);
    cold.arc = in_si<Power>(1500);
    const HeatRun reheated = heat_run(cold, rings(10, 60));
    CHECK(reheated.end == HeatEnd::done);
    CHECK(reheated.reheats > 0);
    HeatRunSettings small = boss_of(10);
    small.heater = in_si<Power>(100);
    const HeatRun never_warm = heat_run(small, rings(2, 30));
    CHECK(never_warm.end == HeatEnd::heater_too_small);
    CHECK(never_warm.end_at == small.minimum);
    CHECK(never_warm.steps.empty());
    HeatRunSettings hot_air = boss_of(10);
    hot_air.boss.ambient = celsius(255);
    CHECK(heat_run(hot_air, rings(5, 90)).end == HeatEnd::never_cools);
}

TEST_CASE("in warm air a stop ends a little over it, where the rule would wait for ever") {
    HeatRunSettings warm = boss_of(10);
    warm.boss.ambient = celsius(240);
    warm.minimum = celsius(150);
    const HeatRun run = heat_run(warm, rings(5, 90));
    CHECK(run.end == HeatEnd::done);
    CHECK(run.stops > 0);
    for (const HeatStep& step : run.steps)
        if (step.stage == HeatStage::stop)
            CHECK_THAT(deg_c(step.to), WithinAbs(245, 1e-3));
}

TEST_CASE("from the last ring to the hold a boss cools no faster than it may") {
    HeatRunSettings held = boss_of(10);
    held.hold_at = celsius(180);
    held.hold_for = in_si<Time>(3600);
    const HeatRun fast = heat_run(held, rings(4, 60));
    held.cooling_max_K_per_h = 50;
    const HeatRun slow = heat_run(held, rings(4, 60));
    REQUIRE(fast.welding_ends > celsius(185));
    const double fall = deg_c(slow.welding_ends) - 180;
    CHECK_THAT(slow.post_heating.value(), WithinRel(3600 + fall / 50 * 3600, 1e-6));
    CHECK(slow.post_heating > fast.post_heating);
}

TEST_CASE("a hold and slow cooling are part of the day") {
    HeatRunSettings held = boss_of(10);
    held.hold_at = celsius(240);
    held.hold_for = in_si<Time>(7200);
    held.cooling_max_K_per_h = 50;
    const HeatRun run = heat_run(held, rings(2, 30));
    CHECK(run.post_heating.value() >= 7200);
    CHECK_THAT(run.cooling_to_rough.value().value(), WithinRel(180.0 / 50 * 3600, 1e-9)); // 240 to 60 °C
    CHECK(run.cooling_to_finish.value() > Time());
    CHECK(run.post_heat_heat > Energy());
}

TEST_CASE("the peak of the rings is theirs alone, without the hold") {
    HeatRunSettings held = boss_of(10);
    const HeatRun free = heat_run(held, rings(2, 30));
    CHECK(free.ring_peak == free.peak);
    held.hold_at = celsius(400);
    held.hold_for = in_si<Time>(3600);
    const HeatRun run = heat_run(held, rings(2, 30));
    CHECK(run.ring_peak == free.ring_peak);
    CHECK_THAT(deg_c(run.peak), WithinAbs(400, 1e-3));
}

TEST_CASE("air warmer than the hold never lets the boss come down to it") {
    HeatRunSettings warm = boss_of(10);
    warm.boss.ambient = celsius(120);
    warm.hold_at = celsius(110);
    warm.hold_for = in_si<Time>(3600);
    const HeatRun run = heat_run(warm, rings(1, 20));
    CHECK(run.end == HeatEnd::never_cools);
    CHECK(run.end_at == celsius(110));
}

// The curve has as many points in each stretch of one power, the warm-up and two stretches of cooling.
TEST_CASE("a curve without rings is drawn in three stretches alike") {
    const HeatRun drawn = heat_run(boss_of(8), {});
    const std::size_t parts = drawn.curve.size() / 3;
    CHECK(parts > 1);
    CHECK(drawn.curve.size() == 3 * parts + 1);
}
