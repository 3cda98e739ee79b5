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
    sample.grade().practice = practice(180);
    CHECK(sample.preheat().minimum->by == "tabulated practice for G");
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

TEST_CASE("outside its composition a method is information where the grade's own row rules") {
    HeatSample sample({{"formula", 340, RF_OUT_OF_COMPOSITION},
                       {"formula at its edge", 270, RF_OUT_OF_COMPOSITION | RF_AT_EDGE}});
    sample.grade().practice = practice(260);
    const Preheat found = sample.preheat();
    CHECK(found.minimum->by == "tabulated practice for G");
    CHECK(found.methods.size() == 2); // the edge says nothing that rules, the unknown row is not needed
    CHECK_FALSE(method(found, "formula").applies);
    CHECK_FALSE(method(found, "formula").in_range);
}

TEST_CASE("without a row of its own the edge and the row for unknown metal count") {
    HeatSample sample({{"formula", 340, RF_OUT_OF_COMPOSITION},
                       {"formula at its edge", 270, RF_OUT_OF_COMPOSITION | RF_AT_EDGE}});
    CHECK_THAT(sample.minimum(), WithinAbs(270, 1e-9)); // 20 mm: the unknown row asks for 200
    sample.wall(40);
    CHECK_THAT(sample.minimum(), WithinAbs(300, 1e-9));
    CHECK(sample.preheat().minimum->by == "tabulated practice for unknown");
}

TEST_CASE("a wall outside a method's range counts at its edge") {
    HeatSample sample({{"formula at its edge", 150, RF_OUT_OF_THICKNESS | RF_AT_EDGE}});
    sample.wall(120);
    sample.grade().practice = practice(100);
    CHECK_THAT(sample.minimum(), WithinAbs(150, 1e-9));
    sample.grade().practice.reset();
    CHECK_THAT(sample.minimum(), WithinAbs(300, 1e-9)); // no row at all: the unknown row counts too
    sample.wall(8); // too thin for the method, whose thinnest wall asks for more than this one needs
    CHECK_THAT(sample.minimum(), WithinAbs(150, 1e-9));
    sample.wall(25); // too thick, for all that is known
    CHECK_THAT(sample.minimum(), WithinAbs(200, 1e-9));
}

TEST_CASE("more hydrogen than a row was made for brings the edge in") {
    HeatSample sample({{"formula", 340, RF_OUT_OF_COMPOSITION},
                       {"formula at its edge", 270, RF_OUT_OF_COMPOSITION | RF_AT_EDGE}});
    sample.grade().practice = practice(260);
    sample.what.hydrogen_ml_100g->value = 8;
    CHECK_THAT(sample.minimum(), WithinAbs(260, 1e-9));
    sample.what.hydrogen_ml_100g->value = 8.1;
    CHECK_THAT(sample.minimum(), WithinAbs(270, 1e-9));
    sample.what.hydrogen_ml_100g.reset(); // no class at all
    CHECK_THAT(sample.minimum(), WithinAbs(270, 1e-9));
    CHECK(method(sample.preheat(), "tabulated practice for G").note == "made for hydrogen up to 8 ml/100 g");
}

TEST_CASE("a practice that ends before the wall keeps its hottest row and calls the unknown row") {
    HeatSample sample;
    sample.grade().practice = PreheatGroup{"tabulated practice for G", {}, {}, {row(13, 290), row(22, 305)}};
    CHECK_THAT(sample.minimum(), WithinAbs(305, 1e-9));
    sample.wall(24);
    CHECK_THAT(sample.minimum(), WithinAbs(305, 1e-9)); // the unknown row asks for 200 there
    const Preheat found = sample.preheat();
    CHECK_FALSE(method(found, "tabulated practice for G").in_range);
    CHECK(method(found, "tabulated practice for unknown").applies);
}

TEST_CASE("a certificate of another steel keeps the grade's rows as the least and calls the unknown row") {
    HeatSample sample({{"formula", 340, RF_OUT_OF_COMPOSITION},
                       {"formula at its edge", 270, RF_OUT_OF_COMPOSITION | RF_AT_EDGE}});
    sample.grade().practice = practice(60);
    sample.what.not_the_grade = "C 0.5 % is over the 0.2 % of G";
    Preheat found = sample.preheat();
    CHECK(method(found, "tabulated practice for G").applies);
    CHECK_FALSE(method(found, "tabulated practice for G").in_range);
    CHECK(method(found, "tabulated practice for G").note ==
          "the mill certificate is of another steel: C 0.5 % is over the 0.2 % of G");
    CHECK_THAT(deg_c(method(found, "tabulated practice for unknown").minimum.value()), WithinAbs(200, 1e-9));
    CHECK(found.minimum->by == "formula at its edge");
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

TEST_CASE("a wall that is not known is taken as one that a list may not reach") {
    HeatSample sample({{"formula", 90}});
    sample.grade().practice = PreheatGroup{"tabulated practice for G", {}, {}, {row(13, 150), row(22, 220)}};
    sample.what.wall.reset();
    CHECK_THAT(sample.minimum(), WithinAbs(300, 1e-9)); // the unknown row over 25 mm
    CHECK_FALSE(method(sample.preheat(), "tabulated practice for G").in_range);
    sample.grade().practice.reset();
    sample.family.preheat_groups = {{"a list", {}, {}, {row(13, 150), row(22, 320)}}};
    sample.grade().preheat_groups = {"a list"};
    CHECK_THAT(sample.minimum(), WithinAbs(320, 1e-9));
}

TEST_CASE("where nothing at all applies the row for unknown metal does") {
    HeatSample sample({{"mute", 0, RF_NOT_USABLE}});
    CHECK_THAT(sample.minimum(), WithinAbs(200, 1e-9));
    HeatSample table_only;
    CHECK_THAT(table_only.minimum(), WithinAbs(200, 1e-9));
    table_only.wall(26);
    CHECK_THAT(table_only.minimum(), WithinAbs(300, 1e-9));
    table_only.what.wall.reset(); // the thickest row
    CHECK_THAT(table_only.minimum(), WithinAbs(300, 1e-9));
}

TEST_CASE("a family without rows and without rules has no figure, never a low one") {
    HeatSample sample;
    sample.grade().structure = "austenitic"; // the unknown row is of ferritic metal
    const Preheat found = sample.preheat();
    CHECK_FALSE(found.minimum);
    CHECK_FALSE(found.interpass_max);
    CHECK_FALSE(found.least());
    CHECK(found.state == PreheatState::not_known);
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
