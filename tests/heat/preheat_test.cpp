#include <catch2/catch.hpp>

#include "heat/heat_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

const PreheatMethod& method(const Preheat& preheat, const std::string& name) {
    for (const PreheatMethod& one : preheat.methods)
        if (one.name == name)
            return one;
    FAIL("no method " << name);
    throw 0;
}

PreheatGroup practice(double minimum_degC) {
    return {"tabulated practice for G", Sourced<double>{8, "practice"}, {}, {row(0, minimum_degC)}};
}

} // namespace

TEST_CASE("the highest applicable minimum rules, whoever asks for it") {
    HeatSample sample({{"low", 60}, {"high", 140}, {"middle", 100}});
    const Preheat found = sample.preheat();
    CHECK_THAT(deg_c(found.minimum->value), WithinAbs(140, 1e-9));
    CHECK(found.minimum->by == "high");
    CHECK(method(found, "high").rules);
    CHECK_FALSE(method(found, "middle").rules);
    CHECK(found.state == PreheatState::figure);
    sample.grade().practice = practice(80);
    CHECK(sample.preheat().minimum->by == "tabulated practice for G"); // a formula does not rule beside it
    CHECK_FALSE(method(sample.preheat(), "high").applies);
}

TEST_CASE("a second opinion and a method without an answer do not rule") {
    HeatSample sample({{"asks", 60}, {"second", 250, RF_SECOND_OPINION}, {"mute", 0, RF_NOT_USABLE}});
    const Preheat found = sample.preheat();
    CHECK(found.minimum->by == "asks");
    CHECK_FALSE(method(found, "second").applies);
    CHECK(method(found, "mute").asks == Asks::unknown);
    CHECK_FALSE(method(found, "mute").in_range);
}

TEST_CASE("no preheat is the chill-off temperature with its flag") {
    HeatSample sample({{"none", 0, RF_NONE_NEEDED}, {"little", 10}});
    const Preheat found = sample.preheat();
    CHECK(found.state == PreheatState::none);
    CHECK_THAT(deg_c(found.minimum->value), WithinAbs(20, 1e-9));
    CHECK(found.minimum->by == "dry and hand-warm");
    sample = HeatSample({{"a little more", 20.5}});
    CHECK(sample.preheat().state == PreheatState::figure);
}

TEST_CASE("a method that asks for preheat without a figure forbids no preheat") {
    HeatSample sample({{"none", 0, RF_NONE_NEEDED}, {"graph", 0, RF_NO_FIGURE}});
    const Preheat found = sample.preheat();
    CHECK(found.state == PreheatState::needed_without_figure);
    CHECK_FALSE(found.figure());
    CHECK_THAT(deg_c(found.least().value()), WithinAbs(20, 1e-9)); // dry and hand-warm at least
    sample = HeatSample({{"formula", 150}, {"graph", 0, RF_NO_FIGURE}});
    CHECK(sample.preheat().state == PreheatState::figure); // another one says how much
}

TEST_CASE("a method made for another alloy rules only where nothing else does") {
    constexpr std::uint32_t another_alloy = RF_OUT_OF_COMPOSITION | RF_AT_EDGE | RF_SECOND_OPINION;
    HeatSample sample({{"formula", 270, another_alloy}});
    CHECK_THAT(sample.minimum(), WithinAbs(270, 1e-9));
    sample.family.preheat_groups = {{"a document", {}, {}, {row(0, 150)}}};
    sample.grade().preheat_groups = {"a document"};
    CHECK_THAT(sample.minimum(), WithinAbs(150, 1e-9));
    CHECK_FALSE(method(sample.preheat(), "formula").applies);
    sample =
        HeatSample({{"formula", 270, RF_OUT_OF_COMPOSITION | RF_AT_EDGE}}); // of the same alloy: the higher
    sample.family.preheat_groups = {{"a document", {}, {}, {row(0, 150)}}};
    sample.grade().preheat_groups = {"a document"};
    CHECK_THAT(sample.minimum(), WithinAbs(270, 1e-9));
}

TEST_CASE("a wall outside a method's range counts at its edge, and no row for unknown metal joins") {
    HeatSample sample({{"formula", 150, RF_OUT_OF_THICKNESS | RF_AT_EDGE}});
    for (const double wall : {8.0, 25.0, 120.0}) {
        sample.wall(wall);
        CHECK_THAT(sample.minimum(), WithinAbs(150, 1e-9));
        CHECK(sample.preheat().methods.size() == 1);
    }
}

// 62 (H^0.35 - 8^0.35) K, the hydrogen term of EN 1011-2 method B.
TEST_CASE("over its hydrogen a row of practice rises, and keeps the word") {
    HeatSample sample({{"formula", 340}});
    sample.grade().practice = practice(260);
    const auto minimum_at = [&](double hydrogen) {
        sample.what.hydrogen_ml_100g->value = hydrogen;
        return sample.minimum();
    };
    CHECK_THAT(minimum_at(8), WithinAbs(260, 1e-9));
    CHECK_THAT(minimum_at(10), WithinAbs(275, 1e-9)); // 260 + 10.4
    CHECK_THAT(minimum_at(30), WithinAbs(340, 1e-9)); // 260 + 75.5
    CHECK(method(sample.preheat(), "tabulated practice for G").note ==
          "raised, since it was made for hydrogen up to 8 ml/100 g");
    CHECK_FALSE(method(sample.preheat(), "formula").applies);
}

TEST_CASE("past its end a row is the least, and a formula that asks for more joins gradually") {
    HeatSample sample({{"formula", 380}});
    sample.grade().practice = PreheatGroup{"tabulated practice for G", {}, {}, {row(13, 290), row(22, 305)}};
    CHECK_THAT(sample.minimum(), WithinAbs(305, 1e-9));
    sample.wall(23); // 25 K a mm at most
    CHECK_THAT(sample.minimum(), WithinAbs(330, 1e-9));
    sample.wall(30);
    CHECK_THAT(sample.minimum(), WithinAbs(380, 1e-9));
    CHECK_FALSE(method(sample.preheat(), "tabulated practice for G").in_range);
    sample.what.wall.reset(); // it may be thicker than the list goes
    CHECK_THAT(sample.minimum(), WithinAbs(380, 1e-9));
    sample = HeatSample({{"formula", 90}});
    sample.grade().practice = PreheatGroup{"tabulated practice for G", {}, {}, {row(13, 290), row(22, 305)}};
    sample.wall(60);
    CHECK_THAT(sample.minimum(), WithinAbs(305, 1e-9));
}

TEST_CASE(
    "a certificate of another steel keeps the grade's rows as the least, and the formula rules beside them") {
    HeatSample sample({{"formula", 270, RF_OUT_OF_COMPOSITION | RF_AT_EDGE}});
    sample.grade().practice = practice(60);
    sample.what.not_the_grade = "C 0.5 % is over the 0.2 % of G";
    const Preheat found = sample.preheat();
    CHECK(method(found, "tabulated practice for G").applies);
    CHECK_FALSE(method(found, "tabulated practice for G").in_range);
    CHECK(method(found, "tabulated practice for G").note ==
          "the mill certificate is of another steel: C 0.5 % is over the 0.2 % of G");
    CHECK(found.minimum->by == "formula");
    CHECK(found.methods.size() == 2);        // the row for unknown metal has no say
    sample.grade().practice = practice(310); // a richer certificate never asks for less
    CHECK_THAT(sample.minimum(), WithinAbs(310, 1e-9));
}

TEST_CASE("a table that lists the grade counts over its hydrogen too, and one for more hydrogen does not") {
    HeatSample sample({{"formula", 90}});
    sample.family.preheat_groups = {{"low", Sourced<double>{8, "practice"}, {}, {row(0, 150)}},
                                    {"not low", {}, Sourced<double>{16, "practice"}, {row(0, 170)}}};
    sample.grade().preheat_groups = {"low", "not low"};
    sample.what.hydrogen_ml_100g->value = 8;
    CHECK_THAT(sample.minimum(), WithinAbs(150, 1e-9));
    sample.what.hydrogen_ml_100g->value = 8.1;
    CHECK_THAT(sample.minimum(), WithinAbs(150, 1e-9));
    CHECK(method(sample.preheat(), "low").note == "made for hydrogen up to 8 ml/100 g");
    sample.what.hydrogen_ml_100g->value = 16.1;
    CHECK_THAT(sample.minimum(), WithinAbs(170, 1e-9));
}

TEST_CASE("a table that only shows the grade is told, and one whose list names it rules") {
    HeatSample sample({{"formula", 90}});
    sample.family.preheat_groups = {{"by class", {}, {}, {row(0, 200)}}, {"by list", {}, {}, {row(0, 150)}}};
    sample.grade().preheat_groups = {"by class", "by list"};
    sample.grade().listed_in = ListedIn{{"by list", "practice"}};
    CHECK_THAT(sample.minimum(), WithinAbs(150, 1e-9));
    CHECK(method(sample.preheat(), "by class").note == "its own list does not name this grade");
    sample.grade().listed_in = ListedIn{};
    CHECK_THAT(sample.minimum(), WithinAbs(90, 1e-9));
}

TEST_CASE("where nothing at all applies preheat is needed, and nobody says how much") {
    HeatSample sample({{"mute", 0, RF_NOT_USABLE}});
    CHECK(sample.preheat().state == PreheatState::needed_without_figure);
    HeatSample table_only;
    CHECK(table_only.preheat().state == PreheatState::needed_without_figure);
    CHECK_FALSE(table_only.preheat().figure());
}

TEST_CASE("a family without rows and without rules has no figure, never a low one") {
    HeatSample sample;
    sample.grade().structure = "austenitic";
    const Preheat found = sample.preheat();
    CHECK_FALSE(found.figure());
    CHECK_FALSE(found.interpass_max);
    CHECK(found.state == PreheatState::needed_without_figure);
}

TEST_CASE("metal in doubt gets no figure, whatever is approved") {
    HeatSample sample({{"formula", 90}});
    sample.grade().practice = practice(60);
    sample.what.doubt = "a magnet does not hold";
    Approved approved;
    approved.reference = "P-12";
    approved.preheat_min = celsius(150);
    const Preheat found = sample.preheat(&approved);
    CHECK(found.state == PreheatState::not_known);
    CHECK(found.doubt == "a magnet does not hold");
    CHECK_FALSE(found.minimum);
    CHECK_FALSE(found.interpass_max);
    CHECK(found.methods.empty());
    CHECK(found.approved == "P-12");
}
