#include <catch2/catch.hpp>

#include <ringfill/caution/bore_rules.hpp>

#include "caution/told.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("a travel that takes over a quarter of the heat away is a caution") {
    WornBore bore;
    bore.name = "pin";
    Bead bead;
    bead.travel = in_si<Speed>(4.0);
    CHECK(fusion_cautions(bore, in_si<Speed>(3.0), bead, {}).empty()); // exactly three quarters
    const std::string told_70 =
        "pin | before | yes | Check fusion on a trial ring: the travel that evens the layers takes much of "
        "the "
        "heat away. | 70 % of the heat input at the travel as set, under 75 % | ISO15614-1";
    CHECK(told(fusion_cautions(bore, in_si<Speed>(2.8), bead, {})) == Lines{told_70});
    FacePad face;
    face.bead.travel = in_si<Speed>(4.0);
    bead.travel = in_si<Speed>(2.8);
    CHECK(told(fusion_cautions(bore, in_si<Speed>(2.8), bead, {face})) == Lines{told_70});
}
