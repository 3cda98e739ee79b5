#include <catch2/catch.hpp>

#include <ringfill/heat/maximum_between_rings.hpp>

#include "heat/asked_case.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

Approved approved(std::optional<double> minimum, std::optional<double> maximum,
                  std::optional<double> hold = {}) {
    Approved made;
    made.reference = "P-12";
    if (minimum)
        made.preheat_min = celsius(*minimum);
    if (maximum)
        made.interpass_max = celsius(*maximum);
    if (hold)
        made.post_heat = Approved::PostHeat{celsius(*hold), in_si<Time>(7200)};
    return made;
}

bool stops(const AskedCase& asked) {
    const Overruled overruled = asked.preheat().overruled;
    return overruled.rings_most || overruled.hold_most || overruled.preheat_most;
}

} // namespace

TEST_CASE("no quenched plate stops at 5 ml/100 g for want of a certificate") {
    for (const char* base : {"steel/S690QL", "steel/A514-B", "steel/A514-F", "steel/A514-Q", "steel/400HB"})
        for (const double wall : {12.0, 24.0, 42.0, 70.0})
            for (const char* filler : {"steel/ER70S-6", "steel/ER110S-1"}) {
                const AskedCase plate{.base = base, .wall_mm = wall, .filler = filler};
                INFO(base << ", " << wall << " mm, " << filler << ": " << plate.minimum() << " to "
                          << plate.maximum());
                CHECK(plate.preheat().state != PreheatState::contradictory);
                CHECK(plate.preheat().state != PreheatState::needed_without_figure);
            }
}

TEST_CASE("the maker's row counts within its own hydrogen and heat input") {
    const AskedCase wear{.base = "steel/400HB", .wall_mm = 12, .heat_kj_mm = 1.7};
    CHECK(wear.preheat().state == PreheatState::none);
    CHECK(wear.preheat().methods.front().in_range);
    const AskedCase cold{.base = "steel/400HB", .wall_mm = 42, .heat_kj_mm = 0.8};
    CHECK_FALSE(cold.preheat().methods.front().in_range);
    CHECK(cold.preheat().minimum->by == "EN 1011-2 method B"); // with the CET that it usually has
    CHECK_THAT((AskedCase{.base = "steel/400HB", .wall_mm = 42, .heat_kj_mm = 1.7}.minimum()),
               WithinAbs(125, 1e-9));
    CHECK_THAT((AskedCase{.base = "steel/S690QL", .wall_mm = 24}.minimum()), WithinAbs(150, 1e-9));
}

TEST_CASE("a full certificate takes the place of the row, and plate of 40 mm can be welded by it") {
    const AskedCase known{
        .base = "steel/S690QL", .wall_mm = 40, .certificate = certificate(0.16, 1.30, 0.50, 0.30, 0.50)};
    CHECK(known.preheat().minimum->by == "EN 1011-2 method B");
    CHECK(known.preheat().state == PreheatState::figure);
    CHECK(known.minimum() <= 175); // as hot as the plate allows
    CHECK(known.preheat().post_heat);
}

TEST_CASE("with consumables of its strength the printed row stands in place of the plate's own") {
    const std::pair<double, double> rows[] = {{10, 125}, {20, 140}, {40, 175}, {70, 190}};
    for (const auto& [wall, least] : rows) {
        const AskedCase plate{.base = "steel/S690QL", .wall_mm = wall, .filler = "steel/ER110S-1"};
        INFO(wall);
        CHECK_THAT(plate.minimum(), WithinAbs(least, 1e-9));
    }
    CHECK((AskedCase{.base = "steel/S690QL", .wall_mm = 20, .hydrogen = 8, .filler = "steel/ER110S-1"}
               .minimum()) >= 140);
}

// S690QL of 70 mm was told to stop and then at least 315 °C, no ring over 200.
TEST_CASE("a stop shows no figure to act on") {
    const AskedCase wet{.base = "steel/S690QL", .wall_mm = 70, .hydrogen = 20};
    const Preheat asked = wet.preheat();
    CHECK(asked.state == PreheatState::contradictory);
}

TEST_CASE("approved heat over what softens hardened steel is a stop until its author has confirmed it") {
    CHECK(stops({.base = "steel/400HB", .approved = approved(100, 350)}));
    CHECK_FALSE(stops({.base = "steel/400HB", .approved = approved(100, 225)}));
    CHECK(stops({.base = "steel/S690QL", .approved = approved(100, 190, 650)}));
    CHECK(stops({.base = "steel/A514-B", .approved = approved(100, 190, 650)}));
    CHECK_FALSE(stops({.base = "steel/S690QL", .approved = approved(100, 250)})); // 50 K over its group's
    CHECK(stops({.base = "steel/S690QL", .approved = approved(100, 251)}));
    CHECK_FALSE(stops({.base = "steel/S355J2", .approved = approved(100, 400)})); // nothing in it softens
}

// 400HB approved to 160 °C was held at 204 °C.
TEST_CASE("plate is never held over its approved maximum") {
    const AskedCase plate{.base = "steel/S690QL", .wall_mm = 70, .approved = approved(100, 160)};
    const Preheat asked = plate.preheat();
    REQUIRE(asked.post_heat);
    CHECK_THAT(deg_c(asked.post_heat->temperature.value), WithinAbs(160, 1e-9));
}

// S690QL of 64 mm was let to 230 °C under a document whose list does not name it.
TEST_CASE("a document's maximum holds only for the plate that its list names") {
    AskedCase plate{.base = "steel/S690QL", .wall_mm = 64, .document = "AWS D1.1"};
    CHECK_THAT(plate.maximum(), WithinAbs(210, 1e-9));
    plate.base = "steel/A514-B";
    CHECK_THAT(plate.maximum(), WithinAbs(230, 1e-9));
}

TEST_CASE("a wall that is not known counts as thick for both limits, so that a window stays open") {
    const AskedCase plate{.base = "steel/A514-Q", .wall_mm = {}};
    const AskedCase thick{.base = "steel/A514-Q", .wall_mm = 120};
    CHECK_THAT(plate.minimum(), WithinAbs(thick.minimum(), 1e-9));
    CHECK_THAT(plate.maximum(), WithinAbs(thick.maximum(), 1e-9));
    CHECK(plate.preheat().state == PreheatState::figure);
}

TEST_CASE("an approved window of nothing is contradictory, a narrow one is told") {
    CHECK((AskedCase{.approved = approved(350, 350)}.preheat().state) == PreheatState::contradictory);
    CHECK((AskedCase{.approved = approved(200, 214)}.preheat().state) == PreheatState::contradictory);
    CHECK((AskedCase{.approved = approved(200, 220)}.preheat().narrow));
    CHECK_FALSE((AskedCase{.approved = approved(200, 225)}.preheat().narrow));
}
