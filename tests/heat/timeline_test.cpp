#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include <ringfill/heat/heat_run.hpp>
#include <ringfill/heat/thermal_history.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

/// A boss of 4 kg that must stop now and again, is held after welding and cools slowly.
HeatRunSettings busy_boss() {
    HeatRunSettings settings;
    settings.boss.mass = in_si<Mass>(4);
    settings.boss.conductance = in_si<Conductance>(1.2);
    settings.boss.emitting = in_si<Area>(0.09);
    settings.boss.ambient = celsius(10);
    settings.heated = in_si<Mass>(6);
    settings.minimum = celsius(150);
    settings.maximum = celsius(250);
    settings.arc = in_si<Power>(2200);
    settings.heater = in_si<Power>(6000);
    settings.hold_at = celsius(180);
    settings.hold_for = in_si<Time>(3600);
    settings.cooling_max_K_per_h = 50;
    settings.rough_below = celsius(60);
    settings.finish_below = celsius(30);
    return settings;
}

std::vector<RingPass> two_layers(std::size_t count, double seconds) {
    return {{"bore", 1, std::vector<Time>(count, in_si<Time>(seconds))},
            {"bore", 2, std::vector<Time>(count, in_si<Time>(seconds))}};
}

bool is_of_rings(HeatStage stage) {
    return stage == HeatStage::weld || stage == HeatStage::stop || stage == HeatStage::reheat;
}

} // namespace

// Each step begins where and when the one before it ended, and the curve passes through both.
TEST_CASE("the steps of a run follow one another on the curve") {
    const HeatRunSettings settings = busy_boss();
    const HeatRun run = heat_run(settings, two_layers(20, 45));
    REQUIRE(run.end == HeatEnd::done);
    REQUIRE(run.stops > 1);
    double clock = 0;
    Temperature at = settings.boss.ambient;
    for (const HeatStep& step : run.steps) {
        CAPTURE(static_cast<int>(step.stage), step.after_ring);
        CHECK_THAT(step.from.value(), WithinAbs(at.value(), 1e-9));
        clock += step.time.value();
        at = step.to;
        CHECK(std::any_of(run.curve.begin(), run.curve.end(), [&](const CurvePoint& point) {
            return std::fabs(point.time.value() - clock) < 1e-3 &&
                   std::fabs((point.temperature - at).value()) < 1e-6;
        }));
        if (!is_of_rings(step.stage)) {
            CHECK(step.layer == 0);
            CHECK(step.after_ring == 0);
            CHECK(step.pass.empty());
        }
    }
    CHECK_THAT(clock, WithinAbs(run.curve.back().time.value(), 1e-3));
    CHECK(std::is_sorted(run.curve.begin(), run.curve.end(),
                         [](const CurvePoint& a, const CurvePoint& b) { return a.time < b.time; }));
    for (const HeatStage stage :
         {HeatStage::warm_up, HeatStage::post_heat, HeatStage::cool_to_rough, HeatStage::cool_to_finish})
        CHECK(std::count_if(run.steps.begin(), run.steps.end(),
                            [&](const HeatStep& step) { return step.stage == stage; }) == 1);
}

// With no room between the limits a stop comes after every ring but the last: 1 and 2 of the first layer, its
// third before the second layer begins, 1 and 2 of that.
TEST_CASE("a stop tells the ring that it comes after") {
    HeatRunSettings tight = busy_boss();
    tight.maximum = tight.minimum;
    const HeatRun run = heat_run(tight, two_layers(3, 45));
    std::vector<std::pair<int, int>> stops;
    for (const HeatStep& step : run.steps)
        if (step.stage == HeatStage::stop)
            stops.emplace_back(step.layer, step.after_ring);
    CHECK(stops == std::vector<std::pair<int, int>>{{1, 1}, {1, 2}, {1, 3}, {2, 1}, {2, 2}});
    std::vector<std::pair<int, int>> welds;
    for (const HeatStep& step : run.steps)
        if (step.stage == HeatStage::weld)
            welds.emplace_back(step.layer, step.after_ring);
    CHECK(welds == std::vector<std::pair<int, int>>{{1, 1}, {1, 2}, {1, 3}, {2, 1}, {2, 2}, {2, 3}});
}

// A stop of 50 K under a maximum of 250, a reheat of 25 K over a minimum of 150 degC [common practice, no
// source].
TEST_CASE("a stop and a reheat end as deep and as high as the rule says") {
    HeatRunSettings settings = busy_boss();
    const HeatRun stopped = heat_run(settings, two_layers(20, 45));
    for (const HeatStep& step : stopped.steps)
        if (step.stage == HeatStage::stop)
            CHECK_THAT(deg_c(step.to), WithinAbs(200, 1e-3));
    settings.boss.conductance = in_si<Conductance>(30);
    settings.arc = in_si<Power>(1500);
    const HeatRun reheated = heat_run(settings, two_layers(10, 60));
    REQUIRE(reheated.reheats > 0);
    for (const HeatStep& step : reheated.steps)
        if (step.stage == HeatStage::reheat)
            CHECK_THAT(deg_c(step.to), WithinAbs(175, 1e-3));
    CHECK(reheated_to(settings) == in_si<Temperature>(448.15));
    settings.maximum = celsius(160);
    CHECK(reheated_to(settings) == celsius(160));
}

// By hand: what the heater gives is its power times the time it burns.
TEST_CASE("the heat of each part is its power times its time") {
    HeatRunSettings settings = busy_boss();
    settings.cooling_max_K_per_h.reset();
    settings.boss.conductance = in_si<Conductance>(30);
    settings.arc = in_si<Power>(1500);
    const HeatRun run = heat_run(settings, two_layers(10, 60));
    REQUIRE(run.end == HeatEnd::done);
    REQUIRE(run.reheats > 0);
    CHECK_THAT(run.warm_up_heat.value(), WithinAbs(6000 * run.warm_up.value(), 1e-6));
    CHECK_THAT(run.reheat_heat.value(), WithinAbs(6000 * run.reheating.value(), 1e-6));
    CHECK_THAT(run.arc_heat.value(), WithinAbs(1500 * 1200.0, 1e-6));
    CHECK_THAT(run.welding.value(), WithinAbs(1200, 1e-9));
    const double reaching = run.post_heating.value() - 3600;
    const double loss = heat_loss(settings.boss, celsius(180)).value();
    CHECK(reaching > 0);
    CHECK_THAT(run.post_heat_heat.value(), WithinAbs(6000 * reaching + loss * 3600, 1e-3));
}

// What one ring makes of the boss is worked out first, and the limit laid close to it.
TEST_CASE("a ring begins at the limit and not half a degree past it") {
    HeatRunSettings settings = busy_boss();
    const ThermalState begin{settings.minimum, Energy(), Time()};
    const Time ring = in_si<Time>(45);
    const double hot = after(settings.boss, begin, settings.arc, ring).temperature.value();
    const std::vector<RingPass> two = {{"bore", 1, {ring, ring}}};
    settings.maximum = in_si<Temperature>(hot - 0.5);
    CHECK(heat_run(settings, two).stops == 1);
    settings.maximum = in_si<Temperature>(hot + 1e-3);
    CHECK(heat_run(settings, two).stops == 0);
    settings.boss.conductance = in_si<Conductance>(30);
    double arc_W = heat_loss(settings.boss, settings.minimum).value();
    settings.arc = in_si<Power>(arc_W * 0.995); // falls by about 0.3 K, and is heated again
    const double cold = after(settings.boss, begin, settings.arc, ring).temperature.value();
    REQUIRE(settings.minimum.value() - cold > 0.1);
    REQUIRE(settings.minimum.value() - cold < 0.9);
    CHECK(heat_run(settings, two).reheats == 1);
}

TEST_CASE("a long stretch of the curve is drawn in twelve parts") {
    const HeatRun run = heat_run(busy_boss(), {{"bore", 1, {in_si<Time>(45)}}});
    REQUIRE(run.curve.size() > 13);
    for (std::size_t i = 0; i <= 12; ++i)
        CHECK_THAT(run.curve[i].time.value(),
                   WithinAbs(run.warm_up.value() * static_cast<double>(i) / 12, 1e-3));
    CHECK_THAT(deg_c(run.curve[12].temperature), WithinAbs(150, 1e-3));
}

// Three stretches cool no faster than 50 K/h: down to the hold, from it to roughing, and on to finishing.
TEST_CASE("the heat that keeps the cooling slow is that of its stretches") {
    HeatRunSettings settings = busy_boss();
    settings.maximum = celsius(300);
    const HeatRun run = heat_run(settings, two_layers(2, 45));
    REQUIRE(run.end == HeatEnd::done);
    REQUIRE(run.welding_ends > *settings.hold_at);
    double heat = 0;
    Temperature from = run.welding_ends;
    for (const Temperature& to : {*settings.hold_at, settings.rough_below, settings.finish_below}) {
        heat += cool_slowly(settings.boss, from, to, 50.0 / 3600).value().heat.value();
        from = to;
    }
    CHECK(heat > 0);
    CHECK_THAT(run.slow_heat.value(), WithinRel(heat, 1e-6));
}
