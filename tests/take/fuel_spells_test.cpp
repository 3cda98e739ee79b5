#include <catch2/catch.hpp>

#include <ringfill/take/needs.hpp>

#include "take/round_fuels.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

FuelUse with_spells(FuelUse use, std::vector<FlameSpell> spells) {
    use.spells = std::move(spells);
    return use;
}

FlameSpell spell(const char* name, double heat_MJ, double minutes) {
    return {name, in_si<Energy>(heat_MJ * 1e6), in_si<Time>(minutes * 60)};
}

} // namespace

// Worked by hand: 6 MJ in 24 min and 4 MJ in 80 min of a heater of 25 % at 50 MJ/kg are 1.2 and 0.24 kg/h on
// average, where the burner of 40 kW takes 2.88 kg/h.
TEST_CASE("what burns in air is drawn by the average of each spell of flame") {
    const FuelUse use = with_spells(use_of(10, 40), {spell("warm-up", 6, 24), spell("hold", 4, 80)});
    const Need line = lines_for({use}, 0)[0];
    CHECK_THAT(line.need, WithinAbs(0.8, exact));
    CHECK(cover_in_words(line) == "2 x small");
    CHECK_THAT(line.why,
               Catch::Contains("40 kW burns 2.88 kg/h, on average at most 1.20 kg/h (warm-up); on top"));
    const FuelUse slow = with_spells(use_of(10, 40), {spell("warm-up", 6, 48), spell("hold", 4, 80)});
    CHECK(cover_in_words(lines_for({slow}, 0)[0]) == "1 x small");
}

TEST_CASE("no spell burns more than its burner, one without time as much") {
    const auto covered = [](double minutes) {
        return cover_in_words(
            lines_for({with_spells(use_of(10, 20), {spell("warm-up", 10, minutes)})}, 0)[0]);
    };
    CHECK(covered(1) == "2 x small"); // 1.44 kg/h
    CHECK(covered(0) == "2 x small");
}

TEST_CASE("a fuel that takes oxygen is drawn by its burner while it is lit, however little it is") {
    const FuelUse use = with_spells(use_of(1, 40, "town gas"), {spell("warm-up", 1, 60)});
    CHECK(cover_in_words(lines_for({use}, 0)[0]) == "3 x other"); // 0.08 kg at 2.88 kg/h
}

TEST_CASE("a bore whose heat is not known has a line that says so, or is named in that of the others") {
    FuelUse unknown = use_of(0, 10);
    unknown.unknown = "give boss_diameter";
    const auto alone = lines_for({unknown});
    REQUIRE(alone.size() == 1);
    CHECK(is_unknown(alone[0]));
    CHECK_FALSE(alone[0].pack_known);
    CHECK(alone[0].cover.empty());
    CHECK(alone[0].working.empty());
    CHECK(alone[0].why == "not known of arm root (give boss_diameter)");
    const auto both = lines_for({unknown, use_of(10, 10, "wood gas", 1, "link")}, 0);
    REQUIRE(both.size() == 1);
    CHECK_FALSE(is_unknown(both[0]));
    CHECK_THAT(both[0].need, WithinAbs(0.8, exact));
    CHECK(both[0].why.ends_with("; more is needed, not known, of arm root (give boss_diameter)"));
    FuelUse electric = unknown;
    electric.fuel.clear();
    CHECK(lines_for({electric}).empty());
    unknown.fuel = "town gas"; // neither its oxygen is told
    CHECK(lines_for({unknown}).size() == 1);
}
