// What a heat balance costs: a boss from the first flame to cold, and what its steps cost alone.
#define CATCH_CONFIG_ENABLE_BENCHMARKING
#include <catch2/catch.hpp>

#include <fmt/format.h>

#include <ringfill/heat/heat_run.hpp>

#include "heat/boss_cases.hpp"

using namespace ringfill;

namespace {

HeatRunSettings boss_of_the_sample() {
    HeatRunSettings settings;
    settings.boss = testing::shape_of(180, 95, 100, 4.3);
    settings.metal = testing::plain_steel();
    settings.ambient = celsius(4);
    settings.minimum = celsius(260);
    settings.maximum = celsius(350);
    settings.skin = settings.maximum;
    settings.arc = in_si<Power>(2220);
    settings.heater = in_si<Power>(7500);
    settings.start_delay = in_si<Time>(120);
    settings.step_over = in_si<Time>(12);
    settings.cleaning = in_si<Time>(240);
    settings.blanket = millimetres(25);
    settings.rough_below = celsius(60);
    settings.finish_below = celsius(30);
    return settings;
}

} // namespace

TEST_CASE("the heat balance of a boss of 46 rings, against its steps alone") {
    HeatRunSettings settings = boss_of_the_sample();
    const RingPass layer{"bore", 1, std::vector<Time>(23, in_si<Time>(43)), Length(), settings.boss.length};
    const std::vector<RingPass> layers(2, layer);
    REQUIRE(heat_run(settings, layers).end == HeatEnd::done);
    BENCHMARK("without a plate") {
        return heat_run(settings, layers).curve.size();
    };
    const Length plate = millimetres(42.4);
    settings.boss.plates = {{plate, settings.boss.length / 2.0, usual_reach(plate)}};
    BENCHMARK("with one plate as thick as the wall") {
        return heat_run(settings, layers).curve.size();
    };
    BossEquation equation(boss_mesh(settings.boss), settings.metal, settings.ambient, 3.6);
    BossLoad load;
    load.heater = 7500;
    BENCHMARK("a thousand steps of 8 s") {
        BossField field = equation.at_ambient();
        for (int i = 0; i < 1000; ++i)
            equation.step(field, load, 8);
        return field.lost;
    };
}
