#include <catch2/catch.hpp>

#include <ringfill/take/needs.hpp>

#include "take/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

Need line_for(const FillerUse& use, double reserve = 0.1, UnitSystem units = UnitSystem::metric,
              const Packs& packs = round_packs()) {
    return wire_need(use, reserve, packs, round_lives(), units);
}

} // namespace

// Worked by hand: on top of 5.5 kg come 10 %, 4 m of 10 g/m in the liner and a trial ring: 0.55 + 0.04 + 0.11
// = 0.70 kg. 6.2 kg are one spool of 15 or two of 5, and two leave less over.
TEST_CASE("a line of wire says how much, in what and why") {
    const Need line = line_for(wire_use());
    CHECK(item(line) == "wire steel/X1 1.2 mm");
    CHECK(unit(line) == "kg");
    CHECK_THAT(line.need, WithinAbs(5.5, 1e-12));
    CHECK_THAT(line.reserve, WithinAbs(0.70, 1e-12));
    CHECK(cover_in_words(line) == "2 x 5 kg spool");
    CHECK_THAT(line.supplied, WithinAbs(10, 1e-12));
    CHECK_THAT(line.spare, WithinAbs(3.8, 1e-12));
    CHECK(line.source == "practice");
    CHECK(line.why ==
          "5.50 kg for the bores: 5.00 kg laid plus what the arc loses, and 12 starts with 100.0 mm of trim "
          "each; "
          "on top 10 %, 40 g to fill a liner of 4.00 m, 0.11 kg for one trial ring the size of arm root "
          "with main");
}

TEST_CASE("each procedure has its trial ring and a job without reserve still fills its liner") {
    FillerUse use = wire_use();
    use.trials.push_back({"slow", "boom foot", kg(0.25)});
    const Need line = line_for(use, 0);
    CHECK_THAT(line.reserve, WithinAbs(0.40, 1e-12));
    CHECK(line.why ==
          "5.50 kg for the bores: 5.00 kg laid plus what the arc loses, and 12 starts with 100.0 mm of trim "
          "each; "
          "on top 0 %, 40 g to fill a liner of 4.00 m, 0.11 kg for one trial ring the size of arm root "
          "with main, 0.25 kg for one trial ring the size of boom foot with slow");
}

// Worked by hand: 12.126 lb and 11.023 lb, 40 g are 1.41 oz, 4 m are 13.1 ft; two spools of 4.535 kg
// hold 9.07.
TEST_CASE("in inch units wire is told in pounds and taken on inch spools") {
    const Need line = line_for(wire_use(), 0.1, UnitSystem::inch);
    CHECK(item(line, UnitSystem::inch) == "wire steel/X1 0.047 in");
    CHECK(cover_in_words(line) == "2 x 10 lb spool");
    CHECK_THAT(line.supplied, WithinAbs(9.07, 1e-12));
    CHECK(
        line.why ==
        "12.13 lb for the bores: 11.02 lb laid plus what the arc loses, and 12 starts with 3.937 in of trim "
        "each; on top 10 %, 1.4 oz to fill a liner of 13.1 ft, 0.24 lb for one trial ring the size of "
        "arm root with main");
}

TEST_CASE("the feeder's spools are taken, by their name in the table where they have one") {
    FillerUse use = wire_use();
    use.spools = {kg(15)};
    CHECK(cover_in_words(line_for(use)) == "1 x 15 kg spool");
    use.spools = {kg(7)};
    CHECK(cover_in_words(line_for(use)) == "1 x 7 kg spool");
    use.spools = {kg(10 * factor::pound)}; // a 10 lb spool is 4.535 kg in the table, 4.5359 by its pounds
    CHECK(cover_in_words(line_for(use)) == "2 x 10 lb spool");
    use.spools = {kg(15.0019)}; // up to 2 g apart are the same spool
    CHECK(cover_in_words(line_for(use)) == "1 x 15 kg spool");
    use.spools = {kg(15.0021)};
    CHECK(cover_in_words(line_for(use)) == "1 x 15.0021 kg spool");
    use.spools = {kg(15), kg(5), kg(5)};
    CHECK(cover_in_words(line_for(use)) == "2 x 5 kg spool");
}

// Worked by hand: without a price one spool of 15 is one pack and seven of 1 are too many; with one price a
// kilogram seven of 1 cost less.
TEST_CASE("a price by the kilogram counts the wire and not the spools") {
    FillerUse use = wire_use();
    use.spools = {kg(1), kg(15)};
    CHECK(cover_in_words(line_for(use)) == "1 x 15 kg spool");
    use.price_kg = 4.2;
    CHECK(cover_in_words(line_for(use)) == "7 x 1 kg spool");
}

TEST_CASE("a spool that is not stocked is not offered") {
    Packs packs = round_packs();
    packs.wire[0].stocked = false;
    CHECK(cover_in_words(line_for(wire_use(), 0.1, UnitSystem::metric, packs)) == "1 x 15 kg spool");
}

TEST_CASE("a spool that just holds the wire is enough") {
    FillerUse use = wire_use();
    use.trials.clear();
    use.wire = kg(14.96);
    CHECK(cover_in_words(line_for(use, 0)) == "1 x 15 kg spool");
    use.wire = kg(14.9605); // with 40 g for the liner half a gram too much
    CHECK(cover_in_words(line_for(use, 0)) == "1 x 5 kg spool, 1 x 15 kg spool");
}

TEST_CASE("with no spool in the table the line says so and has none to spare") {
    const Need line = line_for(wire_use(), 0.1, UnitSystem::metric, Packs());
    CHECK_FALSE(line.pack_known);
    CHECK(line.cover.empty());
    CHECK(line.supplied == 0);
    CHECK(line.spare == 0);
    CHECK_THAT(line.need, WithinAbs(5.5, 1e-12));
    CHECK(line.why ==
          "5.50 kg for the bores: 5.00 kg laid plus what the arc loses, and 12 starts with 100.0 mm of trim "
          "each; "
          "on top 10 %, 40 g to fill a liner of 4.00 m, 0.11 kg for one trial ring the size of arm root "
          "with main; no spool of wire is in the table of packs");
}
