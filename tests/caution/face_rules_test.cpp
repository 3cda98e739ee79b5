#include <catch2/catch.hpp>

#include "caution/told.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Lines cautions(double inner, double outer, double extra_build) {
    WornBore bore;
    bore.name = "drum side";
    bore.finish_diameter = millimetres(90);
    bore.boss_diameter = millimetres(180);
    bore.faces = {{millimetres(inner), millimetres(outer), millimetres(2)}};
    BorePlan plan;
    plan.faces.emplace_back().extra_build = millimetres(extra_build);
    return told_by(face_rules, bore, plan);
}

} // namespace

TEST_CASE("a face that does not lie on the boss is a caution") {
    CHECK(cautions(90, 180, 0).empty());
    CHECK(cautions(90, 181, 0) ==
          Lines{"drum side | before | yes | Check the diameters of face 1: its pad does not lie on "
                "the boss. | it reaches from 90.0 mm to 181.0 mm | practice"});
    CHECK(cautions(20, 90, 0).size() == 1);
    CHECK(cautions(20, 91, 0).empty());
}

TEST_CASE("a face built more than a millimetre over what is asked is a caution") {
    CHECK(cautions(90, 150, 1).empty());
    CHECK(cautions(90, 150, 1.2) ==
          Lines{"drum side | before | yes | Lay less metal a minute on face 1, or expect more facing. "
                "| at the fastest travel it is built 1.2 mm over what is asked | practice"});
}
