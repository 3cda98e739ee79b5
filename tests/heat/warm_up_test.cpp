#include <catch2/catch.hpp>

#include <ringfill/heat/boss_balance.hpp>
#include <ringfill/heat/warm_up.hpp>

#include "heat/boss_cases.hpp"

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;
using testing::plain_steel;
using testing::shape_of;

namespace {

BossEquation boss_of(double outside_mm, double bore_mm = 95, double length_mm = 100) {
    return BossEquation(boss_mesh(shape_of(outside_mm, bore_mm, length_mm)), plain_steel(), celsius(4), 3.6);
}

WarmUpRule rule_to(double degrees, double power) {
    WarmUpRule rule;
    rule.bore = celsius(degrees).value();
    rule.skin = celsius(350).value();
    rule.power = power;
    rule.most_seconds = 6 * 3600;
    return rule;
}

} // namespace

TEST_CASE("a warm-up ends when the coldest place of the bore is there") {
    BossEquation equation = boss_of(180);
    BossWalk walk(equation);
    const WarmedUp warm = warm_up(walk, rule_to(200, 7500));
    REQUIRE(warm.is_ready);
    CHECK_THAT(coldest_bore(walk.mesh(), walk.field()), WithinAbs(celsius(200).value(), 2e-3));
    CHECK(warm.skin > warm.bore);
    CHECK(warm.heating == warm.time);
    CHECK_FALSE(warm.skin_waited);
    CHECK(walk.load().heater == 0);
    CHECK_THAT(warm.heat.value(), WithinRel(7500 * warm.time.value(), 1e-12));
    const double stored = equation.content(walk.field()) - equation.content(equation.at_ambient());
    CHECK_THAT(stored + warm.lost.value(), WithinRel(warm.heat.value(), 1e-9));
    const WarmedUp again = warm_up(walk, rule_to(199, 7500));
    CHECK(again.is_ready);
    CHECK(again.time == Time());
}

TEST_CASE("the heater waits while the outside is at its limit, and the bore catches up") {
    BossEquation equation = boss_of(400);
    BossWalk walk(equation);
    WarmUpRule rule = rule_to(250, 30'000);
    rule.skin = celsius(300).value();
    const WarmedUp warm = warm_up(walk, rule);
    REQUIRE(warm.is_ready);
    CHECK(warm.skin_waited);
    CHECK(warm.heating < warm.time);
    CHECK(warm.skin < celsius(300.1));
    BossWalk free(equation);
    rule.skin = celsius(600).value();
    const WarmedUp faster = warm_up(free, rule);
    CHECK(faster.time < warm.time);
    CHECK(faster.skin > celsius(300));
}

TEST_CASE("iron is heated no faster than its rate") {
    BossEquation equation = boss_of(240);
    BossWalk walk(equation);
    WarmUpRule rule = rule_to(200, 20'000);
    rule.fastest = 60.0 / 3600;
    rule.most_seconds = 20 * 3600;
    const WarmedUp warm = warm_up(walk, rule);
    REQUIRE(warm.is_ready);
    const double rise = (warm.mean - celsius(4)).value();
    CHECK_THAT(rise / warm.time.value() * 3600, WithinAbs(60, 1));
    CHECK(warm.heat.value() < 20'000 * warm.time.value() / 4);
}

TEST_CASE("a heater that is too small is told the least power that would do in two hours") {
    BossEquation equation = boss_of(300);
    BossWalk walk(equation);
    const WarmUpRule weak = rule_to(250, 400);
    CHECK_FALSE(warm_up(walk, weak).is_ready);
    CHECK_THAT(walk.seconds(), WithinAbs(6 * 3600, 1e-6));
    const double least = least_power(equation, weak).value();
    const auto minutes_with = [&](double power) {
        BossWalk trial(equation);
        return warm_up(trial, rule_to(250, power)).time.value() / 60;
    };
    CHECK(minutes_with(least) <= 120.001);
    CHECK(minutes_with(0.98 * least) > 120);
    CHECK_FALSE(least_power(equation, rule_to(250, 10))); // 640 W are too little as well
}
