#include <catch2/catch.hpp>

#include <cmath>

#include <ringfill/heat/base_composition.hpp>

#include "heat/asked_case.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

double ce_reached(const AskedCase& asked) {
    const HeatCase what = asked.what();
    return what.reached.ce_iiw.value_or(index_of(ce_iiw_index, what.composition));
}

} // namespace

// S355J2 with every maximum at once has CE 0.52; its standard allows 0.45 to 30 mm and 0.47 over, 0.02 more
// for copper and silicon.
TEST_CASE("a grade never holds more than the cap of its standard, by product thickness") {
    CHECK_THAT(ce_reached({.wall_mm = 30}), WithinAbs(0.47, 1e-9));
    CHECK_THAT(ce_reached({.wall_mm = 30.1}), WithinAbs(0.49, 1e-9));
    CHECK_THAT(ce_reached({.wall_mm = 12, .product_mm = 60}), WithinAbs(0.49, 1e-9));
    CHECK(ce_reached({.bought_after = 2003}) > 0.5); // it may be of the edition before
    CHECK_THAT(ce_reached({.bought_after = 2004}), WithinAbs(0.47, 1e-9));
    CHECK(AskedCase{.base = "steel/S235JR"}.what().cap_assumes_year);
    CHECK_FALSE(AskedCase{.base = "steel/S235JR", .bought_after = 2010}.what().cap_assumes_year);
    CHECK_FALSE(AskedCase{}.what().cap_assumes_year); // S355J2 is a name of that edition
}

TEST_CASE("an unknown wall takes the ladle and the cap of the thickest product") {
    CHECK_THAT(ce_reached({.wall_mm = {}}), WithinAbs(0.51, 1e-9));
    CHECK_THAT(share_of(AskedCase{.wall_mm = {}}.what().composition, "C"), WithinAbs(0.22, 1e-12));
    CHECK_THAT(share_of(AskedCase{.wall_mm = 40}.what().composition, "C"), WithinAbs(0.20, 1e-12));
}

TEST_CASE("a certificate lowers the answer, and the saving was told") {
    const AskedCase blind{.base = "steel/S235JR"};
    const AskedCase known{.base = "steel/S235JR", .certificate = certificate(0.10, 0.50)};
    CHECK(known.minimum() < 60);
    CHECK(known.minimum() < blind.minimum());
    const Preheat asked = blind.preheat();
    REQUIRE_FALSE(asked.lowered_by.empty());
    CHECK(asked.lowered_by[0].by == LoweredBy::certificate);
    CHECK(asked.lowered_by[0].kelvin > blind.minimum() - known.minimum() - 10);
}

TEST_CASE("what a standard leaves out is there as usual residuals") {
    const HeatCase what = AskedCase{.base = "steel/1018"}.what();
    CHECK_THAT(share_of(what.composition, "Cr"), WithinAbs(0.15, 1e-12));
    CHECK_THAT(share_of(what.composition, "Mo"), WithinAbs(0.04, 1e-12));
    CHECK_FALSE(what.reached.cet); // no cap: the maxima
}

// E 1011-2 Annex C method B by hand from the same inputs, with the certificate of a usual melt of each grade.
TEST_CASE("every grade that method B rules for is within 25 K of the value by hand from its certificate") {
    const std::pair<const char*, Certificate> melts[] = {
        {"steel/S235JR", certificate(0.14, 0.60)},
        {"steel/S275JR", certificate(0.17, 1.00)},
        {"steel/S355J2", certificate(0.16, 1.35)},
        {"steel/S355JR", certificate(0.18, 1.40)},
        {"steel/1018", certificate(0.18, 0.75)},
        {"steel/S690QL", certificate(0.15, 1.25, 0.40, 0.25, 0.30)},
        {"steel/400HB", certificate(0.15, 1.30, 0.40, 0.15, 0.05)},
        {"steel/A514-B", certificate(0.17, 0.85, 0.50, 0.20, 0.05)}};
    for (const auto& [base, melt] : melts)
        for (const double wall : {12.0, 24.0, 42.0, 70.0}) {
            const AskedCase asked{.base = base, .wall_mm = wall, .certificate = melt};
            const HeatCase what = asked.what();
            CHECK_FALSE(what.not_the_grade);
            const double cet = std::max(index_of(cet_index, what.composition), 0.08 + 0.12 + 0.03);
            const double hand = std::max(20.0, method_b_by_hand(cet, wall, 5, 0.8));
            INFO(base << ", " << wall << " mm: " << asked.minimum() << " against " << hand << " by hand");
            CHECK(std::abs(asked.minimum() - hand) <= 25);
        }
}
