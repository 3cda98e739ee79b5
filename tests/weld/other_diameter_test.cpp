#include <catch2/catch.hpp>

#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

namespace {

/// A row of 1.0 mm with every figure that goes with the section.
WireSize row() {
    WireSize size;
    size.diameter = mm(1);
    size.linear_mass = {in_si<LinearMass>(0.006), "own"};
    size.melting = {{0.4, "own"}, {8e-5, "own"}};
    size.mass = {in_si<Mass>(0.030), "own"};
    return size;
}

} // namespace

// Section 6, by hand: of 2 mm the section is four times that of 1 mm; a metre and a piece weigh four times as
// much. The same energy melts the same volume, so a feed asks for the current of a fourth: a/4. The
// resistance of the free wire falls to a fourth as well: b/16.
TEST_CASE("a row serves another diameter by its section") {
    const WireSize thick = scaled_to(row(), mm(2));
    CHECK(thick.diameter == mm(2));
    CHECK_THAT(thick.linear_mass.value().value.value(), WithinRel(0.024, 1e-13));
    CHECK_THAT(thick.melting.value().a.value, WithinRel(0.1, 1e-13));
    CHECK_THAT(thick.melting.value().b.value, WithinRel(5e-6, 1e-13));
    CHECK_THAT(thick.mass.value().value.value(), WithinRel(0.120, 1e-13));
}

TEST_CASE("two diameters are the same wire up to 0.02 mm apart") {
    CHECK(is_same_wire(mm(1), mm(1.0199)));
    CHECK(is_same_wire(mm(1.0199), mm(1)));
    CHECK_FALSE(is_same_wire(mm(1), mm(1.021)));
    CHECK(is_same_wire(mm(1.016), mm(1))); // 0.040 in and 1.0 mm
    const WireSize same = scaled_to(row(), mm(1.0199));
    CHECK(same.diameter == mm(1));
    CHECK(same.linear_mass.value().value == row().linear_mass.value().value);
}
