#include <catch2/catch.hpp>

#include <ringfill/units/factor.hpp>

#include "caution/told.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

Length mm(double value) {
    return millimetres(value);
}

WornBore arm_root(double stock_mm) {
    WornBore bore;
    bore.name = "arm root";
    bore.stock = mm(stock_mm);
    return bore;
}

Build to_43() {
    Build build;
    build.weld_to_radius = mm(43);
    return build;
}

/// Two layers at 0.9 that would be even at 0.8, ending at a radius.
Layering ending_at(double radius_mm) {
    Layering layering;
    layering.layers = 2;
    layering.scale = 0.9;
    layering.even_scale = 0.8;
    layering.end_radius = mm(radius_mm);
    return layering;
}

Bead laid_with(double valley_mm) {
    Bead bead;
    bead.scale = 0.9;
    bead.valley = mm(valley_mm);
    bead.travel = in_si<Speed>(0.4 / factor::minute);
    return bead;
}

Deposition eight_metres() {
    Deposition deposition;
    deposition.wire_feed = in_si<Speed>(8 / factor::minute);
    return deposition;
}

Lines cautions(double stock_mm, double valley_mm, double end_mm, UnitSystem units = UnitSystem::metric) {
    BorePlan plan;
    plan.build = to_43();
    plan.bead = laid_with(valley_mm);
    plan.layering = ending_at(end_mm);
    plan.deposition = eight_metres();
    return told_by(weld_rules, arm_root(stock_mm), plan, units);
}

} // namespace

TEST_CASE("a weld with enough stock and even layers has no caution") {
    CHECK(cautions(2, 0.9, 43).empty());
}

TEST_CASE("less than half a millimetre of stock over the valleys is a caution") {
    CHECK(cautions(2, 1.499, 43).empty());
    CHECK(cautions(2, 1.501, 43) ==
          Lines{"arm root | before | yes | Leave more stock: weld pull and re-setting the bar may leave "
                "valleys that do not "
                "clean up. | 2.0 mm of stock over valleys up to 1.5 mm deep | practice"});
    CHECK(cautions(0, 0.9, 43) ==
          Lines{"arm root | before | yes | Leave more stock: weld pull and re-setting the bar may leave "
                "valleys that do not "
                "clean up. | 0.0 mm of stock over valleys up to 0.9 mm deep | practice"});
}

// Worked by hand (section 5): the feed that removes the extra stock is 8 x 0.8^2 / 0.9^2 = 6.3 m/min.
TEST_CASE("more than a millimetre of extra stock is a caution that names the lower feed") {
    CHECK(cautions(2, 0.9, 42.001).empty());
    CHECK(cautions(2, 0.9, 41.8) ==
          Lines{"arm root | before | yes | Lower the wire feed to 6.3 m/min and the layers come out even. | "
                "at the fastest "
                "travel of 400 mm/min the weld ends 1.2 mm per side inside the size asked for | practice"});
    CHECK(cautions(2, 0.9, 41.999).size() == 1);
}

// Worked by hand: 6.3210 m/min are 248.9 in/min, 400 mm/min 15.7 in/min, 1.2 mm 0.047 in.
TEST_CASE("extra stock is told in inches to those who read them") {
    CHECK(
        cautions(2, 0.9, 41.8, UnitSystem::inch) ==
        Lines{"arm root | before | yes | Lower the wire feed to 249 in/min and the layers come out even. | "
              "at the fastest "
              "travel of 15.7 in/min the weld ends 0.047 in per side inside the size asked for | practice"});
}

TEST_CASE("both cautions of a weld come in order") {
    CHECK(cautions(2, 1.6, 41.8) ==
          Lines{"arm root | before | yes | Leave more stock: weld pull and re-setting the bar may leave "
                "valleys that do not "
                "clean up. | 2.0 mm of stock over valleys up to 1.6 mm deep | practice",
                "arm root | before | yes | Lower the wire feed to 6.3 m/min and the layers come out even. | "
                "at the fastest "
                "travel of 400 mm/min the weld ends 1.2 mm per side inside the size asked for | practice"});
}

// Round trip: laid again with the feed it names, at the fastest travel, the layers end on the size asked for.
TEST_CASE("the lower feed does make the layers even") {
    Deposition deposition = eight_metres();
    deposition.density = in_si<Density>(7850);
    deposition.linear_mass = in_si<LinearMass>(0.00888);
    deposition.efficiency = 0.95;
    deposition.rate = deposition.linear_mass * deposition.wire_feed * deposition.efficiency;
    const Speed slow = in_si<Speed>(0.3 / factor::minute);
    const Speed fast = in_si<Speed>(0.33 / factor::minute);
    const Bead whole = bead(deposition, slow, 3, usual_pitch_ratio);
    const Length start = mm(60);
    const Length target = mm(60) - 1.4 * whole.layer_height();
    const auto layering = lay_layers(start, target, whole, fast);
    REQUIRE(layering);
    REQUIRE(layering->end_radius < target - mm(1)); // the travel is at its limit
    deposition.wire_feed *= even_share(*layering, scaled(whole, layering->scale));
    deposition.rate = deposition.linear_mass * deposition.wire_feed * deposition.efficiency;
    const Bead lower = bead(deposition, fast, 3, usual_pitch_ratio);
    const auto radii = layer_radii(start, lower.layer_height(), layering->layers);
    REQUIRE(static_cast<int>(radii.size()) == layering->layers + 1);
    CHECK_THAT(radii.back().value() * 1e3, WithinAbs(target.value() * 1e3, 1e-9));
}
