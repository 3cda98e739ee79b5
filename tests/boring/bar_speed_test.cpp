#include <catch2/catch.hpp>

#include <ringfill/boring/bar.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;

namespace {

Turning rpm(double value) {
    return in_si<Turning>(value / 60);
}

/// At 60 m/min on 90 mm, 212.2 rev/min.
BarSpeed at_90_mm(const std::vector<Turning>& listed) {
    return bar_speed(in_si<Speed>(1), millimetres(90), listed);
}

} // namespace

TEST_CASE("without a list the bar turns as computed") {
    const BarSpeed speed = at_90_mm({});
    CHECK_THAT(rev_min(speed.used), WithinAbs(212.207, 0.001)); // 60000/(90 pi)
    CHECK_FALSE(speed.listed);
    CHECK_FALSE(speed.too_fast);
}

TEST_CASE("of the bar's speeds the highest that does not pass is taken, in any order of the list") {
    const BarSpeed speed = at_90_mm({rpm(315), rpm(80), rpm(200), rpm(125)});
    CHECK_THAT(rev_min(speed.used), WithinAbs(200, 1e-9));
    CHECK(speed.listed);
    CHECK_FALSE(speed.too_fast);
    CHECK_THAT(rev_min(speed.computed), WithinAbs(212.207, 0.001));
}

TEST_CASE("a speed that is the computed one but for its last digit does not pass it") {
    const Turning exact = bar_speed(in_si<Speed>(1), millimetres(90), {}).computed;
    CHECK(at_90_mm({(1 + 1e-12) * exact, rpm(80)}).used > rpm(200));
    CHECK_THAT(rev_min(at_90_mm({(1 + 1e-6) * exact, rpm(80)}).used), WithinAbs(80, 1e-9));
}

TEST_CASE("when all speeds pass, the lowest is taken and said to be too fast") {
    const BarSpeed speed = at_90_mm({rpm(400), rpm(250)});
    CHECK_THAT(rev_min(speed.used), WithinAbs(250, 1e-9));
    CHECK(speed.too_fast);
}
