#include <catch2/catch.hpp>

#include <ringfill/heat/waits.hpp>

using namespace ringfill;
using Catch::WithinAbs;

namespace {

/// A boss of 1,000 s of arc and a step-over of 12 s, without a wait so far.
BossRun boss_run() {
    BossRun boss;
    boss.plates = {millimetres(30)};
    boss.settings.step_over = in_si<Time>(12);
    boss.run.welding = in_si<Time>(1'000);
    return boss;
}

ToldDwell dwell(int from, int to, double seconds) {
    return {"bore", 1, from, to, in_si<Time>(seconds), in_si<Time>(seconds)};
}

} // namespace

// 9 pauses of 40 s and 2 of 60 s, each past 12 s: 9 · 28 + 2 · 48 = 348; with a rest of 100 s 448.
TEST_CASE("waits for the heat are what is told past the step-over, and rests") {
    BossRun boss = boss_run();
    CHECK(waits_for_heat(boss) == Time());
    boss.run.dwells = {dwell(1, 9, 40), dwell(10, 11, 60)};
    CHECK_THAT(waits_for_heat(boss).value(), WithinAbs(348, 1e-9));
    boss.run.resting = in_si<Time>(100);
    CHECK_THAT(waits_for_heat(boss).value(), WithinAbs(448, 1e-9));
}

TEST_CASE("a plate is told where waits are over a quarter of the arc and it takes a quarter of them off") {
    const auto told = [](double bare_s, double plated_s) {
        HeatBalance balance;
        balance.hot = boss_run();
        balance.hot.run.resting = in_si<Time>(bare_s);
        balance.plated = boss_run();
        balance.plated->run.resting = in_si<Time>(plated_s);
        return shorter_with_plate(balance);
    };
    CHECK_FALSE(told(250, 0));
    CHECK_FALSE(told(400, 301));
    REQUIRE(told(251, 0));
    REQUIRE(told(400, 300));
    CHECK(told(400, 300)->bare == in_si<Time>(400));
    CHECK(told(400, 300)->plated == in_si<Time>(300));
    CHECK(told(400, 300)->plate == millimetres(30));
}

TEST_CASE("no plate is told where the job says what is there, or where a run breaks off") {
    HeatBalance balance;
    balance.hot = boss_run();
    balance.hot.run.resting = in_si<Time>(900);
    CHECK_FALSE(shorter_with_plate(balance));
    balance.plated = boss_run();
    REQUIRE(shorter_with_plate(balance));
    balance.plated->run.end = HeatEnd::window_not_held;
    CHECK_FALSE(shorter_with_plate(balance));
}
