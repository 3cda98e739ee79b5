#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "heat/heat_run_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

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
    CHECK(gap_after(run, 0) < 10.01); // cool enough by then
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
    CHECK_THAT(deg_c(reheated_to(with_plate().minimum, with_plate().maximum)), WithinAbs(285, 1e-9));
    HeatRunSettings narrow = with_plate();
    narrow.maximum = celsius(290);
    CHECK_THAT(deg_c(reheated_to(narrow.minimum, narrow.maximum)), WithinAbs(275, 1e-9));
    narrow.maximum = celsius(275);
    CHECK_THAT(deg_c(reheated_to(narrow.minimum, narrow.maximum)), WithinAbs(267, 1e-9));
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
