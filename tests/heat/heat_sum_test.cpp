#include <catch2/catch.hpp>

#include <algorithm>

#include "heat/heat_run_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

TEST_CASE("what goes in while a bore is warmed and welded is stored or lost") {
    for (const HeatRunSettings& settings : {usual(), with_plate()})
        for (const bool stays : {false, true}) {
            HeatRunSettings one = settings;
            one.heater_stays = stays;
            const HeatRun run = heat_run(one, layers(2, 12, 43));
            REQUIRE(run.end == HeatEnd::done);
            const double given = (run.warm_up_heat + run.reheat_heat + run.arc_heat).value();
            CHECK_THAT((run.stored + run.lost).value(), WithinRel(given, 1e-9));
            CHECK_THAT(run.arc_heat.value(), WithinRel(2220 * 24 * 43, 1e-12));
        }
}

TEST_CASE("steps follow one another in time and lie on the curve") {
    HeatRunSettings settings = with_plate();
    settings.hold_at = celsius(300);
    settings.hold_for = in_si<Time>(3600);
    const HeatRun run = heat_run(settings, layers(2, 15, 43));
    REQUIRE(run.end == HeatEnd::done);
    double clock = 0;
    for (const HeatStep& step : run.steps)
        clock += step.time.value();
    CHECK_THAT(clock, WithinAbs(run.curve.back().time.value(), 1e-3));
    CHECK(std::is_sorted(run.curve.begin(), run.curve.end(),
                         [](const CurvePoint& a, const CurvePoint& b) { return a.time < b.time; }));
    for (const HeatStage stage : {HeatStage::warm_up, HeatStage::make_ready, HeatStage::clean,
                                  HeatStage::post_heat, HeatStage::cool_to_rough, HeatStage::cool_to_finish})
        CHECK(count_of(run, stage) == 1);
    double arc = 0;
    double told = 0;
    for (const HeatStep& step : run.steps) {
        arc += step.arc.value();
        told += step.told.value();
        if (step.stage != HeatStage::weld)
            continue;
        CHECK(step.time >= step.arc);
        CHECK(step.arc + step.told >= step.time - in_si<Time>(1e-6)); // told is no less than needed
    }
    CHECK_THAT(arc, WithinRel(run.welding.value(), 1e-12));
    CHECK_THAT(told, WithinRel(run.told_pausing.value(), 1e-12));
    CHECK(run.post_heating.value() >= 3600);
    CHECK(run.post_heat_heat > Energy());
}

TEST_CASE("a slow cooling is under the blanket, the others are told beside it") {
    HeatRunSettings settings = usual();
    settings.cooling_max_K_per_h = 50;
    const HeatRun slow = heat_run(settings, layers(1, 5, 43));
    CHECK(slow.cools_wrapped);
    CHECK(slow.cooling().to_rough == slow.wrapped.to_rough);
    CHECK(*slow.bare.to_rough < *slow.wrapped.to_rough);
    CHECK_FALSE(slow.wrapped_with_plates);
    const HeatRun plated = heat_run(with_plate(), layers(1, 5, 43));
    CHECK_FALSE(plated.cools_wrapped);
    REQUIRE(plated.wrapped_with_plates);
    CHECK(*plated.wrapped_with_plates->to_rough > *plated.wrapped.to_rough);
    CHECK(*plated.wrapped.to_rough > *plated.bare.to_rough);
    CHECK(*plated.bare.to_rough < 0.6 * *heat_run(usual(), layers(1, 5, 43)).bare.to_rough);
}

TEST_CASE("what cannot be done is told, with what would do") {
    HeatRunSettings weak = usual();
    weak.heater = in_si<Power>(300);
    const HeatRun small = heat_run(weak, layers(1, 5, 43));
    CHECK(small.end == HeatEnd::heater_too_small);
    CHECK(small.end_at == weak.minimum);
    REQUIRE(small.needed);
    CHECK(*small.needed > weak.heater);
    CHECK(small.steps.empty());
    weak.heater = *small.needed;
    CHECK(heat_run(weak, layers(1, 5, 43)).warm_up.is_ready);

    HeatRunSettings held_back = usual();
    held_back.boss = shape_of(500, 120, 200);
    held_back.skin = celsius(262);
    CHECK(heat_run(held_back, layers(1, 5, 43)).end == HeatEnd::skin_in_the_way);

    HeatRunSettings cold = with_plate(60);
    cold.heater = in_si<Power>(2500);
    cold.minimum = celsius(150);
    cold.maximum = celsius(200);
    cold.skin = celsius(400);
    cold.arc = in_si<Power>(300);
    cold.boss.plates.push_back({millimetres(60), millimetres(10), millimetres(800)});
    const HeatRun lost = heat_run(cold, layers(1, 20, 200));
    CHECK((lost.end == HeatEnd::window_not_held || lost.end == HeatEnd::heater_too_small));
    CHECK(lost.needed);

    HeatRunSettings light = usual();
    light.boss = shape_of(56, 50, 10);
    light.arc = in_si<Power>(9000);
    CHECK(heat_run(light, layers(1, 3, 60)).end == HeatEnd::melts);
}
