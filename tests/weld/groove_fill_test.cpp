#include <catch2/catch.hpp>

#include <ringfill/weld/faces_and_grooves.hpp>

#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

// Worked by hand (section 7): from 48 to 47.6 mm over 4 mm: pi (2304 - 2265.76) 4 = 480.538 mm3, by a bead of
// 8 mm2 at 5 mm/s.
TEST_CASE("a groove is filled down to the skimmed bore with the whole bead") {
    const auto fill = fill_groove({mm(96), mm(4)}, mm(47.6), round_bead(mm_min(300)), steel_wire());
    CHECK_THAT(as_mm3(fill.volume), WithinAbs(480.538, 5e-4));
    CHECK_THAT(as_mm(fill.path), WithinRel(as_mm3(fill.volume) / 8, 1e-13));
    CHECK_THAT(fill.laid.value(), WithinRel(7850e-9 * as_mm3(fill.volume), 1e-13));
    CHECK_THAT(fill.arc.value(), WithinRel(as_mm3(fill.volume) / 40, 1e-13));
}

// Computed case (closed form by hand): between 51 and 47 mm over 60 mm: 73890.2592 mm3, 0.580039 kg at 7850
// kg/m3, to the last digit.
TEST_CASE("a wide groove weighs what its ring does") {
    const auto fill = fill_groove({mm(102), mm(60)}, mm(47), round_bead(mm_min(300)), steel_wire());
    CHECK_THAT(as_mm3(fill.volume), WithinAbs(73890.2592, 6e-5));
    CHECK_THAT(fill.laid.value(), WithinAbs(0.580039, 5e-7));
}

TEST_CASE("a groove that the skim takes away needs no fill") {
    for (const double diameter : {95.2, 95.0, 90.0}) {
        const auto fill =
            fill_groove({mm(diameter), mm(4)}, mm(95.2) / 2.0, round_bead(mm_min(300)), steel_wire());
        CHECK(fill.volume == Volume());
        CHECK(fill.path == Length());
        CHECK(fill.laid == Mass());
        CHECK(fill.arc == Time());
    }
    CHECK(fill_groove({mm(95.21), mm(4)}, mm(47.6), round_bead(mm_min(300)), steel_wire()).volume > Volume());
}
