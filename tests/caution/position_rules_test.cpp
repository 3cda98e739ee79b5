#include <catch2/catch.hpp>

#include "caution/told.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Lines cautions(const std::string& axis, const std::string& transfer, double section_mm2,
               UnitSystem units = UnitSystem::metric) {
    WornBore bore;
    bore.name = "arm root";
    bore.axis = axis;
    Procedure procedure;
    procedure.transfer = transfer;
    BorePlan plan;
    plan.bead.section = in_si<Area>(section_mm2 * 1e-6);
    return told_by(position_rules, bore, plan, units, procedure);
}

const std::string spray =
    "arm root | before | yes | Use short-circuit or pulsed transfer: spray welds flat only, and with a "
    "horizontal axis every turn passes overhead. | the procedure's transfer is spray | practice";

} // namespace

TEST_CASE("a bead over 20 square millimetres on a horizontal axis is a caution") {
    CHECK(cautions("horizontal", "short", 19.999).empty());
    CHECK(cautions("horizontal", "short", 20.4) ==
          Lines{"arm root | before | yes | Lay a smaller bead: the axis is horizontal, so every turn passes "
                "overhead, and a "
                "large pool sags or drips there. | the bead has a section of 20.4 mm², over 20.0 mm² | "
                "practice"});
    CHECK(cautions("horizontal", "short", 20.001).size() == 1);
}

// Worked by hand: 25.8064 mm2 are 0.04 in2, 20 mm2 0.031.
TEST_CASE("a large bead is told in inches to those who read them") {
    CHECK(cautions("horizontal", "pulse", 25.8064, UnitSystem::inch) ==
          Lines{"arm root | before | yes | Lay a smaller bead: the axis is horizontal, so every turn passes "
                "overhead, and a "
                "large pool sags or drips there. | the bead has a section of 0.040 in², over 0.031 in² | "
                "practice"});
}

TEST_CASE("spray on a horizontal axis is a caution and other transfers are not") {
    CHECK(cautions("horizontal", "spray", 15) == Lines{spray});
    for (const char* transfer : {"short", "pulse", "globular"})
        CHECK(cautions("horizontal", transfer, 15).empty());
}

TEST_CASE("with a vertical axis neither is a caution") {
    CHECK(cautions("vertical", "spray", 60).empty());
}
