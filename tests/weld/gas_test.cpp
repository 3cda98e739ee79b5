#include <catch2/catch.hpp>

#include <ringfill/weld/gas.hpp>

#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

namespace {

double litres_a_minute(VolumeFlow flow) {
    return flow.value() / factor::litre * factor::minute;
}

VolumeFlow flow_of(double litres) {
    return in_si<VolumeFlow>(litres * factor::litre / factor::minute);
}

} // namespace

// Section 8, by hand: 12 L/min for each mm of wire in argon mixtures, 15 in carbon dioxide and for cored wire
// always.
TEST_CASE("the usual flow follows wire and gas") {
    Gas mixture;
    mixture.flow_L_min_per_mm = {12, "practice"};
    Gas dioxide;
    dioxide.flow_L_min_per_mm = {15, "practice"};
    Procedure procedure;
    procedure.wire = mm(1.2);
    Filler solid;
    Filler cored;
    cored.form = FillerForm::cored;
    CHECK_THAT(litres_a_minute(gas_flow(procedure, solid, mixture)), WithinRel(14.4, 1e-13));
    CHECK_THAT(litres_a_minute(gas_flow(procedure, solid, dioxide)), WithinRel(18, 1e-13));
    CHECK_THAT(litres_a_minute(gas_flow(procedure, cored, mixture)), WithinRel(18, 1e-13));
    procedure.gas_flow = flow_of(11);
    CHECK(gas_flow(procedure, cored, mixture) == flow_of(11));
}

// Section 8, by hand: 12 L/min x (60 s + 5 x 3 s) = 15 L, and 5 %.
TEST_CASE("gas flows while the arc burns and about each start") {
    const Volume gas = gas_volume(flow_of(12), in_si<Time>(60), 5, in_si<Time>(1), in_si<Time>(2));
    CHECK_THAT(gas.value() / factor::litre, WithinRel(15.75, 1e-13));
    CHECK(gas_volume(flow_of(12), Time(), 0, in_si<Time>(1), in_si<Time>(2)) == Volume());
}

// Section 8: 10 L/min through the cup of a tungsten torch, whatever the rod and the gas.
TEST_CASE("a rod has the flow of the cup") {
    Gas dioxide;
    dioxide.flow_L_min_per_mm = {15, "practice"};
    Procedure procedure;
    procedure.wire = mm(2.4);
    Filler rod;
    rod.form = FillerForm::rod;
    CHECK_THAT(litres_a_minute(gas_flow(procedure, rod, dioxide)), WithinRel(10, 1e-13));
}
