#include <catch2/catch.hpp>

#include <cmath>

#include <ringfill/weld/bead.hpp>

#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

constexpr double pi = 3.14159265358979323846;

} // namespace

TEST_CASE("rings are counted up to the welded length") {
    CHECK(rings_a_layer(mm(106), mm(5)) == 22);
    CHECK(rings_a_layer(mm(105), mm(5)) == 21);
    CHECK(rings_a_layer(mm(105.001), mm(5)) == 22);
    CHECK(rings_a_layer(mm(4), mm(5)) == 1);
    // 0.3/0.1 is a little under 3, 0.7/0.1 a little under 7, 0.6/0.2 and 1.1/0.1 over: a pitch that fits is
    // not rounded up.
    CHECK(rings_a_layer(mm(0.3), mm(0.1)) == 3);
    CHECK(rings_a_layer(mm(0.6), mm(0.2)) == 3);
    CHECK(rings_a_layer(mm(1.1), mm(0.1)) == 11);
}

// Section 5: a closed ring runs 10 degrees over its own start.
TEST_CASE("a closed ring is a circle and ten degrees") {
    CHECK_THAT(as_mm(ring_path(mm(48))), WithinRel(2 * pi * 48 * 370 / 360, 1e-14));
    CHECK_THAT(as_mm(layer_path(TorchPath::ring, 22, mm(48), mm(5))),
               WithinRel(22 * 2 * pi * 48 * 370 / 360, 1e-14));
    // Rings do not know their pitch.
    CHECK(layer_path(TorchPath::ring, 22, mm(48), mm(5)) == layer_path(TorchPath::ring, 22, mm(48), mm(7)));
}

// Computed case (closed form by hand): r 48, p 5.5 mm: a turn of 301.64304 mm on a circle of 301.59289 mm, to
// the last digit. Second method: the chords between 100,000 points of the helix in space, short by 2e-10 of
// the turn.
TEST_CASE("a helix turn is longer than its circle") {
    const auto helix = [](int turns) { return as_mm(layer_path(TorchPath::helix, turns, mm(48), mm(5.5))); };
    CHECK_THAT(helix(2) - helix(1), WithinAbs(301.64304, 6e-6));
    CHECK_THAT(helix(1) - 301.64304, WithinAbs(301.59289, 1.1e-5)); // the closing ring, without an overlap
    constexpr int points = 100'000;
    double turn = 0;
    for (int i = 0; i < points; ++i) {
        const double from = 2 * pi * i / points;
        const double to = 2 * pi * (i + 1) / points;
        turn += std::hypot(48 * (std::cos(to) - std::cos(from)), 48 * (std::sin(to) - std::sin(from)),
                           5.5 / points);
    }
    CHECK_THAT(helix(2) - helix(1), WithinRel(turn, 1e-9));
    CHECK_THAT(helix(20), WithinRel(20 * turn + 2 * pi * 48, 1e-9));
}

// Worked by hand: 300 mm/min on a circle of 48 mm radius is 300/301.59289 rev/min.
TEST_CASE("the torch turns once for each circle of travel") {
    CHECK_THAT(torch_speed(mm_min(300), mm(48)).value() * 60, WithinRel(300 / (2 * pi * 48), 1e-14));
}
