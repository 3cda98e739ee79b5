#include <catch2/catch.hpp>

#include "asking.hpp"
#include "steel/hydrogen_annex.hpp"

using namespace ringfill::steel;
using namespace ringfill::testing;
using Catch::WithinAbs;

// AWS D1.1-2004 annex XI, a worked look-up in a reply on the forum of the society, read in full: Pcm under
// 0.28 at level H2 is group D; group D, high restraint, 2 in is 300 °F. Exact.
TEST_CASE("the annex gives the group and the preheat of the worked look-up") {
    CHECK(group_by_grid(0.2799, 2) == 'D');
    CHECK(annex_degF('D', 3, 2) == 300.0);
}

// The same look-up asked whole: C 0.20 and Mn 1.40 make a Pcm of 0.27. 300 °F is 148.889 °C by the exact
// factors of NIST SP 811 (2008), B.8; tolerance of rounding.
TEST_CASE("the annex answers the worked look-up through the interface") {
    Numbers numbers = with(usual(), "base_", plain_steel(0.20, 1.40));
    numbers["hydrogen_mL_per_100g"] = 8;
    numbers["restraint"] = 3;
    numbers["wall_m"] = 0.0508;
    const Said said = ask_steel("preheat", numbers);
    const Figure& annex = said.method(annex_name);
    CHECK(annex.flags == RF_SECOND_OPINION);
    CHECK_THAT(degC(annex), WithinAbs((300.0 - 32) * 5 / 9, 1e-9));
    CHECK(annex.note == "by its grid, group D; high restraint");
}

// R. S. Funderburk, article on hydrogen designators in codes, excerpt read: H1 under 5, H2 under 10 ml/100 g,
// H3 not controlled. Exact; a class limit of 5 or 10 is not under it.
TEST_CASE("the levels of hydrogen are the printed ones") {
    CHECK(hydrogen_level(4.99) == 1);
    CHECK(hydrogen_level(5) == 2);
    CHECK(hydrogen_level(9.99) == 2);
    CHECK(hydrogen_level(10) == 3);
    CHECK(hydrogen_level(30) == 3);
}
