#include <catch2/catch.hpp>

#include <gsl/gsl_integration.h>

#include "weld/parabola.hpp"
#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

// Closed form 2/3 w h: 8 x 2.5 mm has 13.33333 mm2. Outside judge: GSL quadrature of h (1 - 4 x^2/w^2) over
// the width.
TEST_CASE("a parabola of width and crown has two thirds of their product") {
    CHECK_THAT(as_mm2(parabola_section(mm(8), mm(2.5))), WithinRel(40.0 / 3, 1e-14));
    gsl_function crown;
    crown.function = [](double x, void*) { return 2.5 * (1 - 4 * x * x / 64); };
    crown.params = nullptr;
    double area = 0;
    double error = 0;
    std::size_t calls = 0;
    gsl_integration_qng(&crown, -4, 4, 0, 1e-12, &area, &error, &calls);
    CHECK_THAT(as_mm2(parabola_section(mm(8), mm(2.5))), WithinRel(area, 1e-12));
}

// Computed case (mass balance by hand, no printed answer): 1.2 mm wire, 8 m/min, 400 mm/min, 95 %, 7850 kg/m3
// both: (pi/4) 1.44 mm2 x 20 x 0.95 = 21.48849 mm2, to its last digit.
TEST_CASE("a bead takes the metal of its wire") {
    const Bead laid = bead(steel_wire(), mm_min(400), 3, usual_pitch_ratio);
    CHECK(laid.scale == 1);
    CHECK_THAT(as_mm2(laid.section), WithinAbs(21.48849, 5e-6));
    CHECK_THAT(as_mm2(laid.section), WithinRel(3.14159265358979 / 4 * 1.44 * 19, 1e-13));
    CHECK(laid.travel == mm_min(400));
}

// Identities of section 4: width and crown hold the section as a parabola and stand in the ratio asked for,
// the pitch is its share of the width, and with two thirds the flat layer is as high as the crown.
TEST_CASE("width, crown and pitch of a bead fit its section") {
    for (const double alpha : {2.0, 3.0, 4.5}) {
        INFO("width over crown " << alpha);
        const Bead laid = bead(steel_wire(), mm_min(400), alpha, usual_pitch_ratio);
        CHECK_THAT(as_mm2(parabola_section(laid.width, laid.crown)), WithinRel(as_mm2(laid.section), 1e-14));
        CHECK_THAT((laid.width / laid.crown).value(), WithinRel(alpha, 1e-14));
        CHECK_THAT((laid.pitch / laid.width).value(), WithinRel(2.0 / 3, 1e-14));
        CHECK_THAT(as_mm(laid.layer_height()), WithinRel(as_mm(laid.crown), 1e-14));
    }
}

// Computed cases (closed forms by hand): w 8, h 2.5 mm, pitch 0.667, 0.700 and 0.738 of the width: mean
// layers of 2.5000, 2.3810 and 2.2584, valleys h (p/w)^2 of 1.1111, 1.2250 and 1.3616 mm, to their last
// digits; the first pitch is exactly two thirds.
TEST_CASE("layer height and valley depth follow from the pitch") {
    Deposition wire = steel_wire();
    const Speed travel = mm_min(400);
    wire.rate = in_si<Area>(40.0 / 3 * 1e-6) * wire.density * travel;
    struct Row {
        double pitch_ratio;
        double layer;
        double valley;
    };
    for (const Row& row : {Row{2.0 / 3, 2.5, 1.1111}, Row{0.7, 2.3810, 1.2250}, Row{0.738, 2.2584, 1.3616}}) {
        INFO("pitch " << row.pitch_ratio);
        const Bead laid = bead(wire, travel, 3.2, row.pitch_ratio);
        CHECK_THAT(as_mm(laid.width), WithinAbs(8, 1e-9));
        CHECK_THAT(as_mm(laid.crown), WithinAbs(2.5, 1e-9));
        CHECK_THAT(as_mm(laid.layer_height()), WithinAbs(row.layer, 5.1e-5));
        CHECK_THAT(as_mm(laid.valley), WithinAbs(row.valley, 5.1e-5));
    }
}

TEST_CASE("a scaled bead keeps its shape and its metal a second") {
    const Bead whole = bead(steel_wire(), mm_min(400), 3, 0.6);
    const Bead small = scaled(whole, 0.9);
    CHECK(small.scale == 0.9);
    CHECK_THAT((small.section / whole.section).value(), WithinRel(0.81, 1e-14));
    for (Length Bead::*size : {&Bead::width, &Bead::crown, &Bead::pitch, &Bead::valley})
        CHECK_THAT((small.*size / (whole.*size)).value(), WithinRel(0.9, 1e-14));
    CHECK_THAT((small.travel / whole.travel).value(), WithinRel(1 / 0.81, 1e-14));
    CHECK_THAT((small.layer_height() / whole.layer_height()).value(), WithinRel(0.9, 1e-14));
    CHECK_THAT((small.section * small.travel / (whole.section * whole.travel)).value(), WithinRel(1, 1e-14));
    CHECK_THAT(scaled(small, 0.5).scale, WithinRel(0.45, 1e-15));
}
