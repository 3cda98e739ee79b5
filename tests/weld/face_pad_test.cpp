#include <catch2/catch.hpp>

#include <cmath>

#include <ringfill/weld/faces_and_grooves.hpp>

#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

constexpr double pi = 3.14159265358979323846;
const Speed no_limit = mm_min(1e9);

std::optional<FacePad> pad_of(double inner, double outer, double build, Speed limit = no_limit) {
    return lay_face({mm(inner), mm(outer), mm(build)}, mm(2), mm(3), round_bead(mm_min(300)), limit,
                    steel_wire());
}

} // namespace

// Worked by hand (section 7): 2 mm of build and 2 of stock are two layers of 2 mm as they are. From 90 to 150
// mm with 3 mm past both: 36 mm in 9 rings of 4 mm at 44, 48, ... 76 mm, together 540 mm of radius; each
// closes 10 degrees over.
TEST_CASE("a face of whole layers is laid with the whole bead") {
    const auto pad = pad_of(90, 150, 2);
    REQUIRE(pad);
    CHECK(pad->layers == 2);
    CHECK(pad->rings == 9);
    CHECK(pad->bead.scale == 1);
    CHECK_THAT(as_mm(pad->extra_build), WithinAbs(0, 1e-12));
    const double path = 2 * 2 * pi * 540 * 370 / 360;
    CHECK_THAT(as_mm(pad->path), WithinRel(path, 1e-13));
    CHECK_THAT(pad->laid.value(), WithinRel(7850e-9 * 8 * path, 1e-13));
    CHECK_THAT(pad->arc.value(), WithinRel(path / 5, 1e-13));
}

// Worked by hand: 5 mm are three layers at 5/6: pitch 10/3, 36/(10/3) = 10.8, so 11 rings from 42 + 5/3 mm
// on, the middle one at 42 + 11 x 10/6 mm; section 8 x 25/36, travel 300 x 36/25.
TEST_CASE("a face between whole layers is laid with an even bead") {
    const auto pad = pad_of(90, 150, 3);
    REQUIRE(pad);
    CHECK(pad->layers == 3);
    CHECK(pad->rings == 11);
    CHECK_THAT(pad->bead.scale, WithinRel(5.0 / 6, 1e-14));
    CHECK_THAT(as_mm(pad->extra_build), WithinAbs(0, 1e-12));
    const double path = 3 * 2 * pi * 11 * (42 + 11 * 10.0 / 6) * 370 / 360;
    CHECK_THAT(as_mm(pad->path), WithinRel(path, 1e-13));
    CHECK_THAT(pad->laid.value(), WithinRel(7850e-9 * 8 * 25 / 36 * path, 1e-13));
    CHECK_THAT(pad->arc.value(), WithinRel(path / (5 * 36.0 / 25), 1e-13));
}

// Layers made even give what was asked but for rounding: never a hair less than nothing over it.
TEST_CASE("an even bead never builds less than nothing over what was asked") {
    for (int hundredths = 1; hundredths <= 400; ++hundredths) {
        INFO(hundredths);
        const auto pad = pad_of(90, 150, hundredths / 100.0);
        REQUIRE(pad);
        CHECK(pad->extra_build >= Length());
        CHECK_THAT(as_mm(pad->extra_build), WithinAbs(0, 1e-12));
    }
}

// Worked by hand: the travel may be a third faster, not 36/25: the scale is sqrt(3)/2 and three layers are
// 3 x 2 x 0.8660254 = 5.1961524 mm, 0.1961524 too many; 36/3.4641016 = 10.4, 11 rings.
TEST_CASE("a face is clamped by the fastest travel as a bore is") {
    const auto pad = pad_of(90, 150, 3, mm_min(400));
    REQUIRE(pad);
    CHECK(pad->layers == 3);
    CHECK(pad->rings == 11);
    CHECK_THAT(pad->bead.scale, WithinRel(std::sqrt(3.0) / 2, 1e-14));
    CHECK_THAT(as_mm(pad->extra_build), WithinAbs(0.1961524, 5e-8));
    CHECK_THAT(pad->bead.travel.value(), WithinRel(mm_min(400).value(), 1e-14));
}

TEST_CASE("a face that leaves no room for its overhang is not laid") {
    CHECK_FALSE(pad_of(6, 150, 2));
    CHECK_FALSE(pad_of(5, 150, 2));
    CHECK(pad_of(6.01, 150, 2));
}

TEST_CASE("a bead far too small for a face is not laid") {
    const Bead tiny = scaled(round_bead(mm_min(300)), 1e-4);
    CHECK_FALSE(lay_face({mm(90), mm(150), mm(2)}, mm(2), mm(3), tiny, no_limit, steel_wire()));
}

// By hand: 2 mm are one layer of 2 mm, and 0.8 mm over both edges of a face of 2 mm of width 3.6 mm, one
// ring.
TEST_CASE("one layer and one ring are a pad") {
    const auto pad =
        lay_face({mm(90), mm(94), mm(1)}, mm(1), mm(0.8), round_bead(mm_min(300)), no_limit, steel_wire());
    REQUIRE(pad);
    CHECK(pad->layers == 1);
    CHECK(pad->rings == 1);
    CHECK_THAT(as_mm(pad->first_radius), WithinRel(44.2 + 2, 1e-14));
    CHECK(pad->last_radius == pad->first_radius);
}

// By hand: 4.001 mm are 2.0005 layers of 2 mm, and two would not reach.
TEST_CASE("a thickness a little over whole layers takes one more") {
    CHECK(pad_of(90, 150, 2.001).value().layers == 3);
}

// By hand: at 1/5000 of its size the bead lays 4e-4 mm a layer; 10 000 of them are 4 mm. The ring of a narrow
// face is 0.7 mm wide, 875 rings of 8e-4 mm.
TEST_CASE("ten thousand layers are the most of a face") {
    const Bead tiny = scaled(round_bead(mm_min(300)), 2e-4);
    const auto layers = [&](double thickness) {
        const auto pad =
            lay_face({mm(90), mm(91), mm(thickness)}, Length(), mm(0.1), tiny, no_limit, steel_wire());
        return pad ? pad->layers : 0;
    };
    CHECK(layers(4) == 10'000);
    CHECK(layers(4.0004) == 0);
}
