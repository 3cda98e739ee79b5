#include <catch2/catch.hpp>

#include <ringfill/heat/boss_cooling.hpp>

#include "heat/boss_cases.hpp"

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;
using testing::plain_steel;
using testing::shape_of;

namespace {

/// A boss that was warmed and left to itself for a while.
BossWalk warm_boss(BossEquation& equation) {
    BossWalk walk(equation);
    BossLoad load;
    load.heater = 7500;
    walk.put(load);
    walk.advance(300);
    walk.put({});
    walk.advance(200);
    return walk;
}

HeatRunSettings settings_of(std::optional<double> rate) {
    HeatRunSettings settings;
    settings.cooling_max_K_per_h = rate;
    settings.rough_below = celsius(60);
    settings.finish_below = celsius(30);
    return settings;
}

} // namespace

TEST_CASE("a blanket slows the cooling, and the heater what it does not keep") {
    BossEquation equation(boss_mesh(shape_of(180, 95, 100)), plain_steel(), celsius(4), 3.6);
    const auto cooled = [&](std::optional<double> rate, CoolingCover cover) {
        BossWalk walk = warm_boss(equation);
        return cool_down(walk, settings_of(rate), cover);
    };
    const BossCooling bare = cooled({}, {});
    const BossCooling wrapped = cooled({}, {true});
    REQUIRE(bare.to_finish);
    REQUIRE(wrapped.to_finish);
    CHECK(*wrapped.to_rough > 3.0 * *bare.to_rough);
    CHECK(bare.heat == Energy());
    const BossCooling slow = cooled(50, {false, false, true});
    CHECK(slow.heat > Energy());
    CHECK(*slow.to_rough > *bare.to_rough);
    CHECK(cooled(50, {true, false, true}).heat < 0.2 * slow.heat);
    CHECK(cooled(50, {}).to_rough == bare.to_rough); // not asked to keep it
}

TEST_CASE("cooling at a rate comes down at that rate until it is slower by itself") {
    BossEquation equation(boss_mesh(shape_of(180, 95, 100)), plain_steel(), celsius(4), 3.6);
    BossWalk walk = warm_boss(equation);
    const double from = mean_bore(walk.mesh(), walk.field());
    const double began = walk.seconds();
    const double heat_before = walk.heater_heat();
    const double content_before = equation.content(walk.field());
    const double lost_before = walk.field().lost;
    const double to = from - 50;
    const double time = come_down(walk, settings_of(50), {false, false, true}, to).value();
    // The rate is that of the mean of the boss, the bore a little ahead of it.
    CHECK_THAT(time, WithinRel(3600, 0.03));
    CHECK_THAT(walk.seconds() - began, WithinAbs(time, 1e-9));
    CHECK_THAT(mean_bore(walk.mesh(), walk.field()), WithinAbs(to, 0.05));
    CHECK_THAT(
        walk.heater_heat() - heat_before,
        WithinRel(equation.content(walk.field()) - content_before + walk.field().lost - lost_before, 1e-9));
}

TEST_CASE("below where it may cool as it likes the heater is out") {
    BossShape shape = shape_of(180, 95, 100);
    shape.plates = {{millimetres(40), millimetres(50), millimetres(700)}};
    BossEquation equation(boss_mesh(shape), plain_steel(), celsius(4), 3.6);
    BossWalk walk = warm_boss(equation);
    HeatRunSettings settings = settings_of(50);
    settings.cooling_slow_down_to = celsius(100);
    const double to_there = come_down(walk, settings, {true, false, true}, celsius(95).value()).value();
    CHECK(to_there > 0);
    const double heat = walk.heater_heat();
    REQUIRE(come_down(walk, settings, {true, false, true}, celsius(60).value()));
    CHECK(walk.heater_heat() == heat);
}

TEST_CASE("a boss does not get colder than the air") {
    BossEquation equation(boss_mesh(shape_of(180, 95, 100)), plain_steel(), celsius(40), 3.6);
    BossWalk walk = warm_boss(equation);
    HeatRunSettings settings = settings_of({});
    const BossCooling cooling = cool_down(walk, settings, {});
    CHECK(cooling.to_rough);
    CHECK_FALSE(cooling.to_finish);
}
