#include <catch2/catch.hpp>

#include "caution/told.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("a travel that takes over a quarter of the heat away is a caution") {
    WornBore bore;
    bore.name = "pin";
    BorePlan plan;
    plan.bead.travel = in_si<Speed>(4.0);
    const auto cautions = [&](double travel_set) {
        plan.travel_set = in_si<Speed>(travel_set);
        return told_by(fusion_rules, bore, plan);
    };
    CHECK(cautions(3.0).empty()); // exactly three quarters
    const std::string told_70 =
        "pin | before | yes | Check fusion on a trial ring: the travel that evens the layers takes much of "
        "the "
        "heat away. | 70 % of the heat input at the travel as set, under 75 % | ISO15614-1";
    CHECK(cautions(2.8) == Lines{told_70});
    plan.faces.emplace_back().bead.travel = in_si<Speed>(4.0);
    plan.bead.travel = in_si<Speed>(2.8);
    CHECK(cautions(2.8) == Lines{told_70});
}
