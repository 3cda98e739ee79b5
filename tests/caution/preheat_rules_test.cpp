#include <catch2/catch.hpp>

#include "caution/preheat_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("where everything is known and in order nothing is said") {
    CHECK(PreheatSample().stops().empty());
    CHECK(PreheatSample().cautions().empty());
}

TEST_CASE("a contradiction stops the work, and both figures are told with who asks for them") {
    PreheatSample sample;
    sample.heat.preheat.state = PreheatState::contradictory;
    sample.heat.preheat.minimum = asked(258, "a table");
    sample.heat.preheat.interpass_max = asked(224, "a document");
    CHECK(
        sample.stops() ==
        Lines{"pin | before | yes | Contradictory: needs an approved procedure. Neither figure is changed. | "
              "at least 260 °C by a table [practice], at most 220 °C by a document [practice] | practice"});
}

TEST_CASE("metal in doubt is identified first, and nothing else is said of its heat") {
    PreheatSample sample;
    sample.heat.wall.reset();
    sample.heat.preheat = {};
    sample.heat.preheat.doubt = "a magnet does not hold, so it is no ferritic and no martensitic steel";
    CHECK(
        sample.stops() ==
        Lines{"pin | before | yes | Stop and identify the metal before any heat. Austenitic manganese steel "
              "is ruined by preheat, cast iron cracks without its own care. No preheat figure is given. | "
              "the job calls it steel/C45, yet a magnet does not hold, so it is no ferritic and no "
              "martensitic steel | practice"});
    CHECK(sample.cautions().empty());
}

TEST_CASE("no figure is never silence") {
    PreheatSample sample;
    sample.heat.preheat = {};
    CHECK(
        sample.stops() ==
        Lines{"pin | before | yes | Take preheat from an approved procedure: no figure can be given here. | "
              "no table and no rule of its family covers steel/C45 | practice"});
}

TEST_CASE("unknown metal: a magnet first, then file, hardness, chemistry") {
    PreheatSample sample;
    sample.heat.unknown_metal = true;
    const std::string judged =
        "pin | before | yes | Have the metal judged before any heat: file, chip or spark test to tell steel "
        "from "
        "cast iron, on which the figures here do not hold; then hardness, and a chip for chemistry. Until "
        "then it "
        "counts as 4140. | the metal is unknown, and a magnet holds on steel and on cast iron | practice";
    CHECK(
        sample.cautions() ==
        Lines{
            "pin | before | yes | Try a magnet before any heat. Where it does not hold firmly, do not heat: "
            "identify the metal first. Where it does, that is no leave to heat: it holds on cast iron as "
            "well. | "
            "the metal is unknown and the job does not say whether a magnet holds | practice",
            judged});
    sample.bore.magnetic = true;
    CHECK(sample.cautions() == Lines{judged});
}

TEST_CASE("a second opinion is told when it asks for more than 25 K more") {
    PreheatSample sample;
    sample.method("a formula", 175, false);
    CHECK(sample.cautions().empty());
    sample.heat.preheat.methods.clear();
    sample.method("a formula", 175.1, false, false);
    CHECK(
        sample.cautions() ==
        Lines{"pin | before | yes | a formula asks for 180 °C, much more than the 150 °C that rule: have the "
              "procedure settled by somebody qualified. | it is outside the range it was made for; the heat "
              "view says how | practice"});
    sample.heat.preheat.methods.clear();
    sample.method("an opinion", 180, false);
    CHECK(
        sample.cautions() ==
        Lines{
            "pin | before | yes | an opinion asks for 180 °C, much more than the 150 °C that rule: have the "
            "procedure settled by somebody qualified. | a second opinion, which does not rule | practice"});
}

TEST_CASE("a second opinion is told only where nothing that applies and is told asks for as much") {
    PreheatSample sample;
    sample.heat.preheat.approved = "P-12";
    sample.method("a rule", 230, true);
    sample.method("an opinion", 225, false);
    CHECK(sample.cautions().size() == 1);
    sample.method("a bolder opinion", 235, false);
    CHECK(sample.cautions().size() == 2);
}

TEST_CASE("a contradiction by the limits of the standard asks for the certificate") {
    PreheatSample sample;
    sample.heat.preheat.state = PreheatState::contradictory;
    sample.method("a formula", 258, true);
    sample.heat.preheat.methods[0].rules = true;
    const auto asks = [&] { return sample.stops().at(0).find("bores[].composition") != std::string::npos; };
    CHECK_FALSE(asks()); // looked up: the certificate would change nothing
    sample.heat.preheat.methods[0].formula = "697*CET";
    CHECK(asks());
    sample.bore.composition = {{"C", 0.2}};
    CHECK_FALSE(asks());
}

TEST_CASE("what is missing is asked for") {
    PreheatSample sample;
    sample.heat.wall.reset();
    sample.heat.hydrogen_ml_100g.reset();
    sample.heat.laid.clear();
    CHECK(
        sample.cautions() ==
        Lines{"pin | before | yes | Measure the boss: preheat is taken for the thickest wall, with high "
              "restraint. | the job gives neither boss_diameter nor heat_wall | practice",
              "pin | before | yes | Find the hydrogen class of steel/ER70S-6 on its certificate: without it "
              "the highest is taken, 20 ml/100 g, and no row made for less rules alone. Where it names none "
              "take one of low hydrogen, of class H4, H5 or H8: this metal hardens. | neither its "
              "designation nor the job names one | EN1011-2-B",
              "pin | before | yes | Write current and voltage into the job: preheat is taken for the heat "
              "input that asks for the most. | the heat input is not known | EN1011-2-B"});
    sample.heat.structure = "martensitic"; // its rows ask for the wall alone
    CHECK(
        sample.cautions() ==
        Lines{"pin | before | yes | Measure the boss: preheat is taken for the thickest wall, with high "
              "restraint. | the job gives neither boss_diameter nor heat_wall | practice",
              "pin | before | yes | Find the hydrogen class of steel/ER70S-6 on its certificate: without it "
              "the highest is taken, 20 ml/100 g, and no row made for less rules alone. Where it names none "
              "take one of low hydrogen, of class H4, H5 or H8: this metal hardens. | neither its "
              "designation nor the job names one | EN1011-2-B"});
    sample.heat.ferritic_filler = false; // there is none of such a class
    CHECK(sample.cautions().at(1).find("low hydrogen") == std::string::npos);
    sample.heat.structure = "austenitic"; // none of them matters there
    CHECK(sample.cautions().empty());
}

TEST_CASE("a heat_wall under the wall, a foreign certificate and a method without a figure are told") {
    PreheatSample sample;
    sample.bore.heat_wall = millimetres(20);
    CHECK(
        sample.cautions() ==
        Lines{"pin | before | yes | Check heat_wall: preheat is taken for less than the wall. | heat_wall is "
              "20.0 mm, the wall after the skim 30.0 mm | own"});
    sample.bore.heat_wall = millimetres(30);
    CHECK(sample.cautions().empty());
    sample.heat.not_the_grade = "C 0.6 % is over the 0.5 % of C45";
    CHECK(
        sample.cautions() ==
        Lines{"pin | before | yes | Ask what the metal is: its certificate is not of steel/C45. The rows of "
              "that grade count as the least, beside the row for unknown steel. | C 0.6 % is over the 0.5 % "
              "of C45 | practice"});
    sample.heat.not_the_grade.reset();
    PreheatMethod graph;
    graph.name = "a graph";
    graph.asks = Asks::unnamed;
    graph.applies = true;
    graph.note = "combined thickness over its limit";
    graph.source = "practice";
    sample.heat.preheat.methods = {graph};
    CHECK(sample.cautions().empty()); // another one names 150
    sample.heat.preheat.minimum.reset();
    sample.heat.preheat.state = sample.heat.preheat.asked = PreheatState::needed_without_figure;
    CHECK(sample.cautions() ==
          Lines{"pin | before | yes | Do not go without preheat: a graph asks for it and gives no figure. | "
                "combined thickness over its limit | practice"});
}

TEST_CASE("a richer certificate of unknown metal is told") {
    PreheatSample sample;
    sample.heat.unknown_metal = true;
    sample.bore.magnetic = true;
    sample.heat.not_the_grade = "Ni 2 % is over the 0.3 % of 4140, which unknown metal counts as";
    REQUIRE(sample.cautions().size() == 2);
    CHECK(
        sample.cautions()[1] ==
        "pin | before | yes | Ask what the metal is: its certificate shows more than 4140, which unknown "
        "metal counts as. The rules count beside the rows. | Ni 2 % is over the 0.3 % of 4140, which unknown "
        "metal counts as | practice");
}

TEST_CASE("stainless filler on steel is warned of its first layer") {
    PreheatSample sample;
    sample.heat.stainless_on_steel = true;
    CHECK(
        sample.cautions() ==
        Lines{
            "pin | before | yes | Let the first layer melt as little of the steel as can be: mixed into the "
            "stainless filler it makes it brittle. | a stainless filler on steel | practice"});
}

TEST_CASE("phosphorus and sulphur over the grade are told") {
    PreheatSample sample;
    sample.heat.dirty_steel = "S 0.3 % is over the 0.045 % of C45";
    CHECK(sample.cautions() ==
          Lines{"pin | before | yes | Expect cracks in the hot weld: lay a trial ring and check it with dye "
                "penetrant before you go on. | S 0.3 % is over the 0.045 % of C45 | practice"});
}

TEST_CASE("a method that asks for more than a flame should give is told, though it has no say") {
    PreheatSample sample;
    PreheatMethod formula;
    formula.name = "a formula";
    formula.asks = Asks::unnamed;
    formula.note = "its equation gives 812 °C, which is no preheat";
    formula.source = "practice";
    sample.heat.preheat.methods = {formula};
    CHECK(sample.cautions() ==
          Lines{"pin | before | yes | Have the metal judged by somebody qualified: a formula asks for more "
                "than any "
                "flame should give. | its equation gives 812 °C, which is no preheat | practice"});
}
