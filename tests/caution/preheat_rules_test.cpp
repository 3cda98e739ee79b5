#include <catch2/catch.hpp>

#include "caution/preheat_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("where everything is known and in order nothing is said") {
    CHECK(PreheatSample().stops().empty());
    CHECK(PreheatSample().cautions().empty());
}

TEST_CASE("a contradiction stops the work, and shows no figure to act on") {
    PreheatSample sample;
    sample.heat.preheat.closed = true;
    sample.heat.preheat.minimum = asked(258, "a table");
    sample.heat.preheat.interpass_max = asked(224, "a document");
    CHECK(sample.stops() == Lines{"pin | before | yes | Contradictory: needs an approved procedure. Neither "
                                  "limit is changed, and no "
                                  "figure is given to act on. | between what a table asks [practice] at "
                                  "least and what a document asks "
                                  "[practice] at most no ring could begin | practice"});
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

TEST_CASE("a second opinion within its range is told where it asks for much more than what rules") {
    PreheatSample sample;
    sample.heat.certified = true;
    sample.method("an opinion", 175, false);
    CHECK(sample.cautions().empty()); // 25 K over a wall of 25 mm
    sample.heat.preheat.methods.clear();
    sample.method("an opinion", 180, false);
    CHECK(sample.cautions() == Lines{"pin | before | yes | an opinion asks for 180 °C, much more than the "
                                     "150 °C of a table that rule: have "
                                     "the procedure settled by somebody qualified. | a second opinion, which "
                                     "does not rule | practice"});
    sample.heat.wall = millimetres(20); // 50 K up to it
    sample.build.wall = millimetres(20);
    CHECK(sample.cautions().empty());
    sample.heat.preheat.methods[0].counts = celsius(205);
    CHECK(sample.cautions().size() == 1);
    sample.heat.certified = false; // worked out from maxima
    CHECK(sample.cautions().empty());
    sample.heat.certified = true;
    sample.heat.preheat.methods[0].in_range = false;
    CHECK(sample.cautions().empty());
}

TEST_CASE("a second opinion is told only where nothing that applies and is told asks for as much") {
    PreheatSample sample;
    sample.heat.certified = true;
    sample.heat.preheat.approved = "P-12";
    sample.method("a rule", 230, true);
    sample.method("an opinion", 225, false);
    CHECK(sample.cautions().size() == 1);
    sample.method("a bolder opinion", 235, false);
    CHECK(sample.cautions().size() == 2);
}

TEST_CASE("a contradiction by the limits of the standard asks for the certificate") {
    PreheatSample sample;
    sample.heat.preheat.closed = true;
    sample.method("a formula", 258, true);
    sample.heat.preheat.methods[0].rules = true;
    const auto asks = [&] { return sample.stops().at(0).find("bores[].composition") != std::string::npos; };
    CHECK_FALSE(asks()); // looked up: the certificate would change nothing
    sample.heat.preheat.methods[0].formula = "697*CET";
    CHECK(asks());
    sample.heat.certified = true;
    CHECK_FALSE(asks());
}

TEST_CASE("what is missing is asked for") {
    PreheatSample sample;
    sample.heat.wall.reset();
    sample.heat.hydrogen_ml_100g = Sourced<double>{30, "hydrogen-unclassed"};
    sample.heat.hydrogen_is_assumed = true;
    sample.heat.laid.clear();
    const std::string wall =
        "pin | before | yes | Measure the boss: preheat is taken for the thickest wall, with high "
        "restraint. | the job gives neither boss_diameter nor heat_wall | practice";
    const std::string hydrogen = "pin | before | yes | Say which hydrogen class steel/ER70S-6 has, or use a "
                                 "low-hydrogen one: without it 30 "
                                 "ml/100 g are taken. This metal hardens: of class H4, H5 or H8 is what it "
                                 "asks for. | neither its designation "
                                 "nor the job names one | EN1011-2-B";
    CHECK(sample.cautions() == Lines{wall, hydrogen,
                                     "pin | before | yes | Write current and voltage into the job: preheat "
                                     "is taken for the heat input that "
                                     "asks for the most. | the heat input is not known | EN1011-2-B"});
    sample.heat.structure = "martensitic"; // its rows ask for the wall alone
    CHECK(sample.cautions() == Lines{wall, hydrogen});
    sample.heat.ferritic_filler = false; // there is none of such a class
    CHECK(sample.cautions().at(1).find("H4, H5") == std::string::npos);
    sample.heat.structure = "austenitic"; // none of them matters there
    CHECK(sample.cautions().empty());
}

TEST_CASE("a wet filler on metal that hardens is advised against first") {
    PreheatSample sample;
    sample.heat.hydrogen_ml_100g = Sourced<double>{30, "practice"};
    CHECK(sample.cautions() ==
          Lines{"pin | before | yes | Use a low-hydrogen filler first: steel/ER70S-6 brings up to 30 ml/100 "
                "g. | hydrogen "
                "cracks metal that hardens, and every ml/100 g asks for more preheat | EN1011-2-B"});
    sample.heat.hydrogen_ml_100g->value = 16;
    CHECK(sample.cautions().empty());
}

TEST_CASE("whose rules hold, a narrow window and a maximum that gave way are told") {
    PreheatSample sample;
    sample.heat.preheat.welding_rules = "AWS D1.1";
    sample.heat.preheat.unlisted_rules = true;
    sample.heat.preheat.narrow = true;
    sample.heat.preheat.interpass_max->gave_way = true;
    sample.heat.cap_assumes_year = true;
    const Lines told = sample.cautions();
    REQUIRE(told.size() == 4);
    CHECK(told[0].find("AWS D1.1 does not name steel/C45 in a list of its own, so it does not rule here") !=
          std::string::npos);
    CHECK(told[1].find("the window is narrow") != std::string::npos);
    CHECK(told[2].find("gives way to the preheat") != std::string::npos);
    CHECK(told[3].find("bought_after") != std::string::npos);
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
    CHECK(sample.cautions() ==
          Lines{"pin | before | yes | Ask what the metal is: its certificate is not of steel/C45. The higher "
                "of what "
                "that grade asks for and of method B on the certificate holds. | C 0.6 % is over the 0.5 % "
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

TEST_CASE("a second opinion without a figure is told in the view alone") {
    PreheatSample sample;
    PreheatMethod table;
    table.name = "a table";
    table.asks = Asks::unnamed;
    table.second_opinion = true;
    table.source = "practice";
    sample.heat.preheat.methods = {table};
    CHECK(sample.cautions().empty());
}
