#include <catch2/catch.hpp>

#include <ringfill/take/needs.hpp>

#include "take/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

Need line_for(const GasUse& use, double reserve = 0.1, UnitSystem units = UnitSystem::metric,
              const Packs& packs = round_packs()) {
    return gas_need(use, reserve, packs, units);
}

const std::string hour_of_mixture =
    "up to 14.4 L/min over 1 h 00 min of arc and 12 starts with gas before and after, 5 % "
    "for purging and leaks; on top 10 %";

} // namespace

// Worked by hand: 1000 L and 10 % are 1100; a small cylinder gives 90 % of 2000 L.
TEST_CASE("a line of gas says how much, in what and why") {
    const Need line = line_for(gas_use("M21", "argon_mixture"));
    CHECK(item(line) == "gas M21");
    CHECK(unit(line) == "L");
    CHECK_THAT(line.need, WithinAbs(1000, 1e-9));
    CHECK_THAT(line.reserve, WithinAbs(100, 1e-9));
    CHECK(cover_in_words(line) == "1 x small mixture");
    CHECK_THAT(line.supplied, WithinAbs(1800, 1e-9));
    CHECK_THAT(line.spare, WithinAbs(700, 1e-9));
    CHECK(line.source == "practice");
    CHECK(line.why == hour_of_mixture);
}

// Worked by hand: a large cylinder gives 9000 L, a small one 1800. For 10000 L the fewest is two, large and
// small.
TEST_CASE("cylinders are counted by what may be drawn from them") {
    GasUse use = gas_use("M21", "argon_mixture");
    use.volume = litres(1800);
    CHECK(cover_in_words(line_for(use, 0)) == "1 x small mixture");
    use.volume = litres(1801);
    CHECK(cover_in_words(line_for(use, 0)) == "2 x small mixture");
    use.volume = litres(10'000);
    CHECK(cover_in_words(line_for(use, 0)) == "1 x small mixture, 1 x large mixture");
}

TEST_CASE("in inch units gas is told in cubic feet and taken in inch cylinders") {
    const Need line = line_for(gas_use("M21", "argon_mixture"), 0.1, UnitSystem::inch);
    CHECK(cover_in_words(line) == "1 x inch mixture");
    // 14.4 L/min x 60 / 28.316847 = 30.5 ft3/h
    CHECK(line.why ==
          "up to 30.5 ft³/h over 1 h 00 min of arc and 12 starts with gas before and after, 5 % for purging "
          "and leaks; on top 10 %");
}

// Worked by hand: 18 L/min is more than one gives at 10: two together, though one of 4000 L would hold the
// gas.
TEST_CASE("carbon dioxide is taken by its draw rate too") {
    GasUse use = gas_use("C1", "carbon_dioxide");
    use.flow = litres_a_minute(18);
    const Need line = line_for(use);
    CHECK(cover_in_words(line) == "2 x small dioxide");
    CHECK_THAT(line.supplied, WithinAbs(8000, 1e-9));
    CHECK_THAT(line.spare, WithinAbs(6900, 1e-9));
    CHECK(line.why ==
          "up to 18.0 L/min over 1 h 00 min of arc and 12 starts with gas before and after, 5 % for purging "
          "and leaks; on top 10 %; 18.0 L/min is more than one cylinder gives without freezing its "
          "regulator: 2 together, or a heated regulator");
}

TEST_CASE("a flow that one cylinder gives adds none") {
    GasUse use = gas_use("C1", "carbon_dioxide");
    use.flow = litres_a_minute(10);
    const Need line = line_for(use);
    CHECK(cover_in_words(line) == "1 x small dioxide");
    CHECK(line.why ==
          "up to 10.0 L/min over 1 h 00 min of arc and 12 starts with gas before and after, 5 % for purging "
          "and leaks; on top 10 %");
    use.flow = litres_a_minute(10.1);
    CHECK(cover_in_words(line_for(use)) == "2 x small dioxide");
    use.flow = litres_a_minute(20);
    CHECK(cover_in_words(line_for(use)) == "2 x small dioxide");
    use.flow = litres_a_minute(20.1);
    CHECK(cover_in_words(line_for(use)) == "3 x small dioxide");
}

TEST_CASE("cylinders taken for their content count towards the draw rate") {
    GasUse use = gas_use("C1", "carbon_dioxide");
    use.flow = litres_a_minute(18);
    use.volume = litres(20'000); // a large one of 16000 and a small one of 4000
    CHECK(cover_in_words(line_for(use, 0)) == "1 x small dioxide, 1 x large dioxide");
    use.volume = litres(16'000); // a large one is enough, and a small one stands beside it for the flow
    CHECK(cover_in_words(line_for(use, 0)) == "1 x small dioxide, 1 x large dioxide");
}

TEST_CASE("a gas that no cylinder holds is needed and not covered") {
    const Need line = line_for(gas_use("I1", "argon"));
    CHECK_FALSE(line.pack_known);
    CHECK(line.cover.empty());
    CHECK_THAT(line.need, WithinAbs(1000, 1e-9));
    CHECK(line.supplied == 0);
    CHECK(line.spare == 0);
    CHECK(line.why == hour_of_mixture + "; no cylinder of this gas is in the table of packs");
}

TEST_CASE("a cylinder that is not stocked is not offered") {
    Packs packs = round_packs();
    packs.gas[0].stocked = false;
    const GasUse use = gas_use("M21", "argon_mixture");
    CHECK(cover_in_words(line_for(use, 0.1, UnitSystem::metric, packs)) == "1 x large mixture");
}

// By hand: two thousandths of what one gives, or half a thousandth of a litre, is already more.
TEST_CASE("a little too much for the cylinders takes one more") {
    GasUse use = gas_use("C1", "carbon_dioxide");
    use.flow = litres_a_minute(20.005);
    CHECK(cover_in_words(line_for(use)) == "3 x small dioxide");
    use = gas_use("M21", "argon_mixture");
    use.volume = litres(1800.0005);
    CHECK(cover_in_words(line_for(use, 0)) == "2 x small mixture");
    Packs packs = round_packs();
    packs.gas[0].content.value = litres(1999.9995); // gives 1799.99955
    packs.gas[1].stocked = false;
    use.volume = litres(1800);
    CHECK(cover_in_words(line_for(use, 0, UnitSystem::metric, packs)) == "2 x small mixture");
}

TEST_CASE("where one kind of cylinder is sold the flow takes more of it") {
    Packs packs;
    packs.gas = {round_packs().gas[2]};
    GasUse use = gas_use("C1", "carbon_dioxide");
    use.flow = litres_a_minute(18);
    CHECK(cover_in_words(line_for(use, 0.1, UnitSystem::metric, packs)) == "2 x small dioxide");
}

TEST_CASE("a cylinder is never counted for nothing, nor for more than its whole litres") {
    Packs packs;
    packs.gas = {cylinder("thimble", UnitSystem::metric, "argon_mixture", 1.5, 0.9)}; // gives 1.35 L
    GasUse use = gas_use("M21", "argon_mixture");
    use.volume = litres(10);
    CHECK(cover_in_words(line_for(use, 0, UnitSystem::metric, packs)) == "10 x thimble");
}
