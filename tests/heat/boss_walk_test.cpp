#include <catch2/catch.hpp>

#include "heat/boss_cases.hpp"

using namespace ringfill;
using Catch::WithinAbs;
using testing::plain_steel;
using testing::shape_of;

namespace {

BossEquation boss() {
    return BossEquation(boss_mesh(shape_of(180, 95, 100)), plain_steel(), celsius(4), 3.6);
}

BossLoad heated(double watts) {
    BossLoad load;
    load.heater = watts;
    return load;
}

} // namespace

// Section 9 of the computation: 2 s after a change, then doubled, at most 30 s while it is heated.
TEST_CASE("steps begin with 2 s after a change and double") {
    BossEquation equation = boss();
    BossWalk walk(equation);
    walk.put(heated(2000));
    std::vector<double> lengths;
    for (int i = 0; i < 6; ++i)
        lengths.push_back(walk.step(1e6));
    CHECK(lengths == std::vector<double>{2, 4, 8, 16, 30, 30});
    walk.put(heated(2000)); // the same: no change
    CHECK(walk.step(1e6) == 30);
    walk.put({});
    CHECK(walk.step(1e6) == 2);
    BossLoad arc;
    arc.arc = 2000;
    arc.band = {0, 0.01};
    walk.put(arc);
    CHECK(walk.step(1e6) == 2);
    arc.band = {0.01, 0.02}; // the arc goes on over the next band
    walk.put(arc);
    CHECK(walk.step(1e6) == 4);
}

TEST_CASE("without an arc no cell changes by much more than 12 K a step, and a short rest joins it") {
    BossEquation equation = boss();
    BossWalk walk(equation);
    walk.put(heated(12'000));
    for (int i = 0; i < 10; ++i) {
        const BossField before = walk.field();
        walk.step(1e6);
        for (std::size_t at = 0; at < before.kelvin.size(); ++at)
            CHECK(walk.field().kelvin[at] - before.kelvin[at] < 24);
    }
    walk.put({});
    CHECK(walk.step(2.5) == 2.5); // 0.5 s would be left
    walk.put(heated(10));
    CHECK(walk.step(2.7) == 2);
}

TEST_CASE("a crossing is met, wherever it lies in its step") {
    for (double degrees = 20; degrees < 120; degrees += 7) {
        BossEquation equation = boss();
        BossWalk walk(equation);
        walk.put(heated(7500));
        const double goal = celsius(degrees).value();
        REQUIRE(walk.advance_to(
            [&](const BossField& field) { return mean_skin(equation.mesh(), field) - goal; }, 1e5));
        CHECK_THAT(mean_skin(equation.mesh(), walk.field()), WithinAbs(goal, 1.1e-3));
    }
    BossEquation equation = boss();
    BossWalk walk(equation);
    CHECK_FALSE(walk.advance_to([](const BossField&) { return -1.0; }, 100));
    CHECK_THAT(walk.seconds(), WithinAbs(100, 1e-9));
    CHECK(walk.advance_to([](const BossField&) { return 0.0; }, 100));
    CHECK_THAT(walk.seconds(), WithinAbs(100, 1e-9));
}

TEST_CASE("the trace of a walk forgets a step that is repeated") {
    BossEquation equation = boss();
    BossWalk walk(equation);
    BossTrace trace;
    walk.trace(&trace);
    walk.put(heated(7500));
    const double goal = celsius(150).value();
    walk.advance_to([&](const BossField& field) { return mean_skin(equation.mesh(), field) - goal; }, 1e5);
    REQUIRE(trace.size() > 1);
    for (std::size_t i = 1; i < trace.size(); ++i)
        CHECK(trace[i].first > trace[i - 1].first);
    CHECK(trace.back().first <= walk.seconds());
}
