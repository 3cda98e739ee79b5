#include <catch2/catch.hpp>

#include <ringfill/heat/warming_rate.hpp>

using namespace ringfill;
using Catch::WithinRel;

// EN-GJS-600-3 was told two minutes to 250 °C.
TEST_CASE("iron rises no faster than its rate, and pays for the time with what is lost") {
    const Warming fast{in_si<Time>(120), in_si<Energy>(9e5), in_si<Energy>(1e4)};
    const Warming slow = kept_to_rate(fast, 240, 60);
    CHECK_THAT(slow.time.value(), WithinRel(4 * 3600.0, 1e-12));
    CHECK_THAT(slow.lost.value(), WithinRel(1e4 * 120, 1e-12));
    CHECK_THAT(slow.heat.value(), WithinRel(9e5 - 1e4 + 1e4 * 120, 1e-12));
    CHECK(kept_to_rate(fast, 240, std::nullopt).time == fast.time);
    CHECK(kept_to_rate({in_si<Time>(20'000), in_si<Energy>(9e5), in_si<Energy>(1e4)}, 240, 60).time.value() ==
          20'000);
}
