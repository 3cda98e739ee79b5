#include <catch2/catch.hpp>

#include "identity/planned.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

// Section 6: whatever is scaled, clamped or added, metal is laid at the rate the wire brings it, mu f eta.
// Rounding of some hundred sums: 1e-12.
TEST_CASE("laid metal over arc time is the deposition rate, in every pass of every job") {
    for (const std::uint64_t seed : seeds_for(0)) {
        INFO("seed " << seed);
        for (const BorePlan& bore : planned(random_sketch(seed)).bores) {
            const Deposition& wire = bore.deposition;
            const double rate = wire.linear_mass.value() * wire.wire_feed.value() * wire.efficiency;
            REQUIRE_THAT(bore.metal.laid.value() / bore.metal.arc.value(), WithinRel(rate, 1e-12));
            for (const Layer& layer : bore.layers)
                REQUIRE_THAT(layer.laid.value() / layer.arc.value(), WithinRel(rate, 1e-12));
            for (const FacePad& face : bore.faces)
                REQUIRE_THAT(face.laid.value() / face.arc.value(), WithinRel(rate, 1e-12));
            for (const GrooveFill& groove : bore.grooves)
                if (groove.volume > Volume())
                    REQUIRE_THAT(groove.laid.value() / groove.arc.value(), WithinRel(rate, 1e-12));
        }
    }
}
