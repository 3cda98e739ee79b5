#include <catch2/catch.hpp>

#include "identity/planned.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Sketch times(Sketch sketch, int factor) {
    for (Sketch::Bore& bore : sketch.bores)
        bore.count *= factor;
    return sketch;
}

} // namespace

// Doubling is exact in binary, so twice the bores are exactly twice the totals; the figures of one bore do
// not change.
TEST_CASE("twice the bores take exactly twice the metal, wire, time and gas") {
    for (const std::uint64_t seed : seeds_for(4)) {
        INFO("seed " << seed);
        const Sketch sketch = random_sketch(seed);
        const Plan once = planned(sketch);
        const Plan twice = planned(times(sketch, 2));
        REQUIRE(twice.totals.laid == 2.0 * once.totals.laid);
        REQUIRE(twice.totals.wire == 2.0 * once.totals.wire);
        REQUIRE(twice.totals.arc == 2.0 * once.totals.arc);
        REQUIRE(twice.totals.gas == 2.0 * once.totals.gas);
        for (std::size_t i = 0; i < once.bores.size(); ++i) {
            REQUIRE(twice.bores[i].count == 2 * once.bores[i].count);
            REQUIRE(twice.bores[i].metal.wire == once.bores[i].metal.wire);
            REQUIRE(twice.bores[i].metal.arc == once.bores[i].metal.arc);
        }
    }
}

TEST_CASE("totals are the figures of one bore times its count, summed in order") {
    for (const std::uint64_t seed : seeds_for(5)) {
        INFO("seed " << seed);
        const Sketch sketch = random_sketch(seed);
        const Plan found = planned(sketch);
        Mass laid;
        Mass wire;
        Time arc;
        for (std::size_t i = 0; i < found.bores.size(); ++i) {
            const double count = sketch.bores[i].count;
            laid += count * found.bores[i].metal.laid;
            wire += count * found.bores[i].metal.wire;
            arc += count * found.bores[i].metal.arc;
        }
        REQUIRE(found.totals.laid == laid);
        REQUIRE(found.totals.wire == wire);
        REQUIRE(found.totals.arc == arc);
    }
}
