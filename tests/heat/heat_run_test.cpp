#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include <ringfill/heat/heat_run.hpp>

#include "heat/boss_cases.hpp"

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;
using testing::plain_steel;
using testing::shape_of;

namespace {

/// A boss of 180 mm with a bore of 95, held between 260 and 350 °C.
HeatRunSettings usual() {
    HeatRunSettings settings;
    settings.boss = shape_of(180, 95, 100, 4.3);
    settings.metal = plain_steel();
    settings.ambient = celsius(4);
    settings.minimum = celsius(260);
    settings.maximum = celsius(350);
    settings.arc = in_si<Power>(2220);
    settings.heater = in_si<Power>(7500);
    settings.skin = settings.maximum;
    settings.start_delay = in_si<Time>(120);
    settings.step_over = in_si<Time>(12);
    settings.cleaning = in_si<Time>(240);
    settings.blanket = millimetres(25);
    settings.rough_below = celsius(60);
    settings.finish_below = celsius(30);
    return settings;
}

HeatRunSettings with_plate(double thickness_mm = 30) {
    HeatRunSettings settings = usual();
    const Length plate = millimetres(thickness_mm);
    settings.boss.plates = {{plate, millimetres(50), usual_reach(plate)}};
    return settings;
}

std::vector<RingPass> layers(int count, std::size_t rings, double seconds) {
    std::vector<RingPass> passes;
    for (int layer = 1; layer <= count; ++layer)
        passes.push_back(
            {"bore", layer, std::vector<Time>(rings, in_si<Time>(seconds)), Length(), millimetres(100)});
    return passes;
}

int count_of(const HeatRun& run, HeatStage stage) {
    return static_cast<int>(std::count_if(run.steps.begin(), run.steps.end(),
                                          [&](const HeatStep& step) { return step.stage == stage; }));
}

double gap_after(const HeatRun& run, std::size_t ring) {
    return (run.arcs[ring + 1].first - run.arcs[ring].second).value();
}

} // namespace

TEST_CASE("no ring begins where the start is hotter than the maximum less its margin") {
    const HeatRun run = heat_run(usual(), layers(2, 23, 43));
    REQUIRE(run.end == HeatEnd::done);
    CHECK(deg_c(run.hottest_start) < 342.3); // the crossing between two looks is linear
    CHECK(deg_c(run.hottest_start) > 341.9); // it waits no longer than it must
    CHECK(run.reheats == 0);
    for (std::size_t ring = 0; ring + 1 < run.arcs.size(); ++ring)
        CHECK(gap_after(run, ring) >= (ring == 22 ? 240 : 12) - 1e-6);
    CHECK(gap_after(run, 20) > gap_after(run, 2)); // the boss gets hotter
    HeatRunSettings wide = usual();
    wide.maximum = celsius(690);
    const HeatRun free = heat_run(wide, layers(1, 23, 43));
    CHECK(free.dwells.empty());
    CHECK_THAT(free.told_pausing.value(), WithinAbs(22 * 12.0, 1e-9));
    CHECK_THAT(free.pausing.value(), WithinAbs(22 * 12.0, 1e-6));
}

TEST_CASE("the first ring's own start is known less well at a wide pitch") {
    HeatRunSettings settings = usual();
    settings.maximum = celsius(345);
    settings.skin = celsius(400);
    const auto first_gap = [&](double pitch_mm) {
        settings.boss.pitch = millimetres(pitch_mm);
        return gap_after(heat_run(settings, layers(1, 20, 43)), 0);
    };
    CHECK(first_gap(6.0) > first_gap(5.9) + 3);
}

TEST_CASE("a step-over under 10 s keeps well under the maximum until then") {
    HeatRunSettings settings = usual();
    settings.maximum = celsius(450);
    settings.step_over = in_si<Time>(2);
    const HeatRun run = heat_run(settings, layers(1, 20, 43));
    REQUIRE(run.end == HeatEnd::done);
    CHECK(gap_after(run, 0) < 10); // cool enough all the same
    bool waits = false;
    for (std::size_t ring = 0; ring + 1 < run.arcs.size(); ++ring)
        waits = waits || std::fabs(gap_after(run, ring) - 10) < 0.2 || gap_after(run, ring) > 10;
    CHECK(waits);
}

TEST_CASE("a heater that was taken away is brought back before the bore is too cold") {
    const HeatRun run = heat_run(with_plate(), layers(1, 20, 43));
    REQUIRE(run.end == HeatEnd::done);
    REQUIRE(run.reheats > 1);
    CHECK_FALSE(run.held);
    CHECK(run.reheat_heat > Energy());
    CHECK_THAT(run.reheat_heat.value(), WithinRel(7500 * run.reheating.value(), 1e-9));
    CHECK_THAT(deg_c(reheated_to(with_plate())), WithinAbs(285, 1e-9));
    HeatRunSettings narrow = with_plate();
    narrow.maximum = celsius(290);
    CHECK_THAT(deg_c(reheated_to(narrow)), WithinAbs(275, 1e-9));
    narrow.maximum = celsius(275);
    CHECK_THAT(deg_c(reheated_to(narrow)), WithinAbs(267, 1e-9));
}

TEST_CASE("a heater that stays holds the bore by a share of the time") {
    HeatRunSettings settings = with_plate();
    settings.heater_stays = true;
    const HeatRun run = heat_run(settings, layers(1, 20, 43));
    REQUIRE(run.end == HeatEnd::done);
    CHECK(run.reheats == 0);
    REQUIRE(run.held);
    CHECK(run.held->duty > 0.05);
    CHECK(run.held->duty < 0.9);
    CHECK_THAT(run.held->mean.value(), WithinRel(7500 * run.held->duty, 1e-9));
    CHECK(run.warm_up.bore > celsius(262));
    CHECK(run.warm_up.bore < heat_run(with_plate(), layers(1, 1, 43)).warm_up.bore);
}

TEST_CASE("a pause of more than 90 s past its least is a rest, with its place") {
    HeatRunSettings settings = usual();
    settings.boss = shape_of(140, 95, 100, 4.3); // thin: each ring warms it by much
    settings.arc = in_si<Power>(4000);
    const HeatRun run = heat_run(settings, layers(1, 20, 43));
    REQUIRE(run.end == HeatEnd::done);
    REQUIRE(run.rests > 1);
    CHECK(count_of(run, HeatStage::rest) >= run.rests);
    double resting = 0;
    for (const HeatStep& step : run.steps)
        if (step.stage == HeatStage::rest) {
            resting += step.time.value();
            CHECK(step.layer == 1);
            CHECK_THAT(gap_after(run, static_cast<std::size_t>(step.after_ring - 1)),
                       WithinAbs(step.time.value() + 12, 1e-6));
            CHECK(step.to < step.from);
        }
    CHECK_THAT(run.resting.value(), WithinAbs(resting, 1e-6));
}

TEST_CASE("a helix goes on until its band is too hot") {
    HeatRunSettings settings = usual();
    settings.minimum = celsius(150);
    std::vector<RingPass> helix = layers(1, 24, 43);
    helix[0].is_helix = true;
    const HeatRun run = heat_run(settings, helix);
    REQUIRE(run.end == HeatEnd::done);
    CHECK(gap_after(run, 0) == 0);
    bool breaks = false;
    for (std::size_t ring = 0; ring + 1 < run.arcs.size(); ++ring)
        breaks = breaks || gap_after(run, ring) > 12;
    CHECK(breaks);
}

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

TEST_CASE("iron that is laid cold waits for the whole part") {
    HeatRunSettings iron = usual();
    iron.ambient = celsius(15);
    iron.minimum = celsius(20);
    iron.maximum = celsius(60);
    iron.by_stitches = true;
    iron.arc = in_si<Power>(1500);
    const HeatRun run = heat_run(iron, layers(1, 4, 30));
    REQUIRE(run.end == HeatEnd::done);
    CHECK(run.rests > 0);
    for (const HeatStep& step : run.steps)
        if (step.stage == HeatStage::rest)
            CHECK_THAT(deg_c(step.to), WithinAbs(45, 0.5)); // 15 and two thirds of 45
}
