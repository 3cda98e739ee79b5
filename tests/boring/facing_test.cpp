#include <catch2/catch.hpp>

#include <ringfill/boring/cuts.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;

// Worked by hand: 2 mm of stock, 0.3 mm built over it and crowns of 0.9 mm are 3.2 mm, three cuts of at most
// 1.5 mm; from 90 to 150 mm with 3 mm past both edges 36 mm a cut; 60 m/min on 156 mm are 122.4 rev/min.
TEST_CASE("a face is cut from its crowns, past both edges, at the speed of its outer edge") {
    const Face face{millimetres(90), millimetres(150), millimetres(2)};
    FacePad pad;
    pad.extra_build = millimetres(0.3);
    pad.bead.valley = millimetres(0.9);
    WornBore bore;
    bore.stock = millimetres(2);
    bore.overhang = millimetres(3);
    BarSettings head;
    head.cutting_speed.value = in_si<Speed>(1);
    head.facing_feed.value = millimetres(0.127);
    head.rough_cut.value = millimetres(1.5);
    const Facing cut = facing(face, pad, bore, head);
    CHECK_THAT(mm(cut.depth), WithinAbs(3.2, 1e-12));
    CHECK(cut.cuts == 3);
    CHECK_THAT(rev_min(cut.bar.used), WithinAbs(122.427, 0.001));
    CHECK_THAT(cut.time.value(), WithinRel(3 * 60 * 36 / (0.127 * 122.427), 1e-5));

    head.bar_speeds = {in_si<Turning>(1), in_si<Turning>(2), in_si<Turning>(3)};
    CHECK(facing(face, pad, bore, head).bar.used == in_si<Turning>(2));
}
