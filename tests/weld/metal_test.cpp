#include <catch2/catch.hpp>

#include <ringfill/weld/bore_weld.hpp>

#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

Mass kg(double value) {
    return in_si<Mass>(value);
}

Layer layer_of(double laid, double arc) {
    Layer layer;
    layer.laid = kg(laid);
    layer.arc = in_si<Time>(arc);
    return layer;
}

/// A ring from 51 mm over 60 mm, finished at 50 mm.
Build ring() {
    Build build;
    build.mean_radius = mm(51);
    build.finish_radius = mm(50);
    return build;
}

/// Layers in that ring.
BoreWeld ring_of(std::vector<Layer> layers, const Deposition& deposition) {
    BoreWeld weld;
    weld.build = ring();
    weld.layers = std::move(layers);
    weld.deposition = deposition;
    return weld;
}

WornBore sixty_long() {
    WornBore bore;
    bore.length = mm(60);
    return bore;
}

} // namespace

// Section 6, by hand: 1.9 kg through 95 %, and 3 x 0.1 m of 8.87814 g/m.
TEST_CASE("wire is laid metal over efficiency and ten centimetres a start") {
    CHECK_THAT(wire_for(kg(1.9), 3, steel_wire()).value(), WithinAbs(2.002663, 5e-7));
    CHECK_THAT(wire_for(kg(1.9), 0, steel_wire()).value(), WithinRel(2, 1e-14));
}

// Computed case (closed form by hand): of a weld from 51 to 47 mm over 60 mm, 0.580039 kg, boring to 50 mm
// cuts away 0.430590 kg; the rest is kept.
TEST_CASE("kept is what stays between skim and finish size") {
    const Metal sum = metal(sixty_long(), ring_of({layer_of(0.4, 60), layer_of(0.3, 50)}, steel_wire()));
    CHECK_THAT(sum.kept.value(), WithinAbs(0.580039 - 0.430590, 1e-6));
    CHECK_THAT(sum.kept_share, WithinRel(sum.kept.value() / 0.7, 1e-13));
    CHECK_THAT(sum.laid.value(), WithinRel(0.7, 1e-14));
    CHECK_THAT(sum.arc.value(), WithinRel(110, 1e-14));
    CHECK(sum.starts == 2);
}

// Section 6, by hand: bore layers + face layers + one a groove, but a groove with nothing to fill has no
// start; the kept share is of the bore's own layers.
TEST_CASE("faces and grooves add their metal, time and starts, and not to the kept share") {
    FacePad face;
    face.layers = 3;
    face.laid = kg(0.5);
    face.arc = in_si<Time>(70);
    GrooveFill groove;
    groove.volume = in_si<Volume>(1e-6);
    groove.laid = kg(0.1);
    groove.arc = in_si<Time>(15);
    BoreWeld weld = ring_of({layer_of(0.4, 60), layer_of(0.3, 50)}, steel_wire());
    weld.faces = {face, face};
    weld.grooves = {groove, GrooveFill()};
    const Metal sum = metal(sixty_long(), weld);
    CHECK_THAT(sum.laid.value(), WithinRel(1.8, 1e-14));
    CHECK_THAT(sum.arc.value(), WithinRel(265, 1e-14));
    CHECK(sum.starts == 2 + 2 * 3 + 1);
    CHECK_THAT(sum.kept_share, WithinRel(sum.kept.value() / 0.7, 1e-13));
    CHECK_THAT(sum.wire.value(), WithinRel(1.8 / 0.95 + 9 * 0.1 * steel_wire().linear_mass.value(), 1e-13));
}

TEST_CASE("breaks of the arc add their starts and trims") {
    Deposition laid;
    laid.efficiency = 0.8;
    laid.linear_mass = in_si<LinearMass>(0.006);
    Metal sum = metal(sixty_long(), ring_of({layer_of(1, 60), layer_of(1, 50), layer_of(2, 40)}, laid));
    CHECK(sum.breaks == 0);
    CHECK(sum.starts == 3);
    sum = with_breaks(sum, 7, laid);
    CHECK(sum.breaks == 7);
    CHECK(sum.starts == 10);
    CHECK_THAT(sum.wire.value(), WithinRel(4 / 0.8 + 10 * 0.1 * 0.006, 1e-12));
}
