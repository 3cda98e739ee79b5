#include <catch2/catch.hpp>

#include <ringfill/boring/cuts.hpp>

using namespace ringfill;
using Catch::WithinRel;

// Worked by hand: 0.2 mm a turn with a nose of 0.8 mm, 0.04/6.4 = 6.25 um, a quarter of it in the mean.
TEST_CASE("roughness grows with the square of the feed and falls with the nose radius") {
    const Roughness fine = roughness(millimetres(0.2), millimetres(0.8));
    CHECK_THAT(fine.peak_to_valley.value(), WithinRel(6.25e-6, 1e-12));
    CHECK_THAT(fine.mean.value(), WithinRel(1.5625e-6, 1e-12));
    CHECK_THAT(roughness(millimetres(0.4), millimetres(0.8)).mean.value(), WithinRel(6.25e-6, 1e-12));
    CHECK_THAT(roughness(millimetres(0.2), millimetres(1.6)).mean.value(), WithinRel(0.78125e-6, 1e-12));
}
