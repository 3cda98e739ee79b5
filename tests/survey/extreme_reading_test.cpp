#include <catch2/catch.hpp>

#include <cmath>

#include <ringfill/survey/survey_working.hpp>

#include "survey/judge.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

/// Seven readings, of which the one at i/7 of a turn stands out; its polynomial is even about it, so there is
/// its extreme, which none of 720 angles meets.
std::vector<Length> one_of_seven(std::size_t i, double mm) {
    std::vector<Length> readings(7, millimetres(50));
    readings[i] = millimetres(mm);
    return readings;
}

} // namespace

TEST_CASE("an extreme on a reading that lies between the searched angles is that reading") {
    for (std::size_t i = 1; i < 7; ++i) {
        const ClockRadius high = extremes(one_of_seven(i, 51)).largest;
        CHECK(high.radius == millimetres(51));
        CHECK_THAT(high.clock.value(), WithinAbs(turn * static_cast<double>(i) / 7, 1e-14));
        const ClockRadius low = extremes(one_of_seven(i, 49)).smallest;
        CHECK(low.radius == millimetres(49));
        CHECK_THAT(low.clock.value(), WithinAbs(turn * static_cast<double>(i) / 7, 1e-14));
    }
}

// 360 degrees x 3/7 of a reading, and 360 x i/720 of a searched angle, as the working says.
TEST_CASE("the working of a clock position divides the turn by what it was searched on") {
    WornBore bore;
    bore.length = millimetres(100);
    bore.worn.stations = {{millimetres(50), one_of_seven(3, 51)}};
    const Survey found = survey(bore.worn, bore.length);
    bool seen = false;
    for (const Working& work : survey_working(bore, found)) {
        if (work.figure != "survey.largest_radius_clock_deg" &&
            work.figure != "survey.smallest_radius_clock_deg")
            continue;
        REQUIRE(work.formula == "360*i/n");
        REQUIRE(work.inputs.size() == 2);
        const double i = work.inputs[0].values().at(0);
        const double n = work.inputs[1].values().at(0);
        CHECK(i == std::round(i));
        CHECK_THAT(360 * i / n, WithinAbs(work.value, 1e-9));
        if (work.figure == "survey.largest_radius_clock_deg") {
            CHECK(i == 3);
            CHECK(n == 7);
        } else {
            CHECK(n == 720);
        }
        seen = true;
    }
    CHECK(seen);
}
