#include <catch2/catch.hpp>

#include <ringfill/caution/preheat_rules.hpp>
#include <ringfill/units/metric.hpp>

#include "caution/told.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

AskedTemperature asked(double degrees, const std::string& by) {
    return {celsius(degrees), by, "practice", {}, {}};
}

/// A bore of known steel, 150 to 250 degC, everything known.
struct Sample {
    WornBore bore;
    Procedure procedure;
    BoreHeat heat;
    Build build;

    Sample() {
        bore.name = "pin";
        bore.base = "steel/C45";
        procedure.filler = "steel/ER70S-6";
        heat.structure = "ferritic";
        heat.wall = millimetres(30);
        build.wall = millimetres(30);
        heat.hydrogen_ml_100g = Sourced<double>{5, "practice"};
        heat.laid = {{"bore", in_si<EnergyPerLength>(5e5)}};
        heat.preheat.minimum = asked(150, "a table");
        heat.preheat.interpass_max = asked(250, "a document");
    }

    void method(const std::string& name, double degrees, bool applies, bool in_range = true) {
        PreheatMethod made;
        made.name = name;
        made.asks = Asks::minimum;
        made.minimum = celsius(degrees);
        made.applies = applies;
        made.in_range = in_range;
        made.source = "practice";
        heat.preheat.methods.push_back(made);
    }

    Lines stops() const { return told(heat_stops(bore, heat, UnitSystem::metric)); }
    Lines cautions() const {
        return told(preheat_cautions(bore, procedure, heat, build, UnitSystem::metric));
    }
};

} // namespace

TEST_CASE("where everything is known and in order nothing is said") {
    CHECK(Sample().stops().empty());
    CHECK(Sample().cautions().empty());
}

TEST_CASE("a contradiction stops the work, and both figures are told with who asks for them") {
    Sample sample;
    sample.heat.preheat.contradictory = true;
    sample.heat.preheat.minimum = asked(258, "a table");
    sample.heat.preheat.interpass_max = asked(224, "a document");
    CHECK(
        sample.stops() ==
        Lines{"pin | before | yes | Contradictory: needs an approved procedure. Neither figure is changed. | "
              "at least 260 °C by a table [practice], at most 220 °C by a document [practice] | practice"});
}

TEST_CASE("with an approved procedure a contradiction goes to its author") {
    Sample sample;
    sample.heat.preheat.contradictory = true;
    sample.heat.preheat.approved = "P-12";
    CHECK(sample.stops() ==
          Lines{"pin | before | yes | Contradictory: ask the author of the approved procedure P-12 before the "
                "first arc. Neither figure is changed. | at least 150 °C by a table [practice], at most 250 °C "
                "by a document [practice] | practice"});
}

TEST_CASE("metal in doubt is identified first, and nothing else is said of its heat") {
    Sample sample;
    sample.heat.doubt = "a magnet does not hold, so it is no ferritic and no martensitic steel";
    sample.heat.wall.reset();
    sample.heat.preheat = {};
    CHECK(sample.stops() ==
          Lines{"pin | before | yes | Stop and identify the metal before any heat. Austenitic manganese steel "
                "is ruined by preheat, cast iron cracks without its own care. No preheat figure is given. | "
                "the job calls it steel/C45, yet a magnet does not hold, so it is no ferritic and no "
                "martensitic steel | practice"});
    CHECK(sample.cautions().empty());
}

TEST_CASE("no figure is never silence") {
    Sample sample;
    sample.heat.preheat = {};
    CHECK(
        sample.stops() ==
        Lines{"pin | before | yes | Take preheat from an approved procedure: no figure can be given here. | "
              "no table and no rule of its family covers steel/C45 | practice"});
}

TEST_CASE("unknown metal: a magnet first, then file, hardness, chemistry") {
    Sample sample;
    sample.heat.unknown_metal = true;
    const std::string judged =
        "pin | before | yes | Have the metal judged before the first arc: file or spark test, hardness, a "
        "chip "
        "for chemistry. Until then it counts as 4140. | the metal is unknown | practice";
    CHECK(
        sample.cautions() ==
        Lines{
            "pin | before | yes | Try a magnet before any heat: the figures here hold only if it holds "
            "firmly. If not, do not heat: identify the metal first. | the metal is unknown and the job does "
            "not say whether a magnet holds | practice",
            judged});
    sample.bore.magnetic = true;
    CHECK(sample.cautions() == Lines{judged});
}

TEST_CASE("a method that applies and asks for more than the approved procedure is told") {
    Sample sample;
    sample.heat.preheat.approved = "P-12";
    sample.method("a table", 150, true);
    CHECK(sample.cautions().empty());
    sample.method("a rule", 151, true);
    sample.method("a stricter rule", 181, true);
    CHECK(sample.cautions() ==
          Lines{"pin | before | yes | The approved procedure P-12 rules with 150 °C, yet a stricter rule "
                "asks for "
                "185 °C: ask its author before the first arc. | a method that applies asks for more than the "
                "approved procedure | practice"});
}

TEST_CASE("a method without a say is told when it asks for more than 25 K more") {
    Sample sample;
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

TEST_CASE("what is missing is asked for") {
    Sample sample;
    sample.heat.wall.reset();
    sample.heat.hydrogen_ml_100g.reset();
    sample.heat.laid.clear();
    CHECK(
        sample.cautions() ==
        Lines{"pin | before | yes | Measure the boss: preheat is taken for the thickest wall, with high "
              "restraint. | the job gives neither boss_diameter nor heat_wall | practice",
              "pin | before | yes | Find the hydrogen class of steel/ER70S-6 on its certificate: without it "
              "the highest is taken, 20 ml/100 g, and no row made for less rules alone. | neither its "
              "designation nor the job names one | EN1011-2-B",
              "pin | before | yes | Write current and voltage into the job: preheat is taken for the heat "
              "input that asks for the most. | the heat input is not known | EN1011-2-B"});
    sample.heat.structure = "martensitic"; // its rows ask for the wall alone
    CHECK(sample.cautions() ==
          Lines{"pin | before | yes | Measure the boss: preheat is taken for the thickest wall, with high "
                "restraint. | the job gives neither boss_diameter nor heat_wall | practice"});
    sample.heat.structure = "austenitic"; // none of them matters there
    CHECK(sample.cautions().empty());
}

TEST_CASE("a heat_wall under the wall, a foreign certificate and a method without a figure are told") {
    Sample sample;
    sample.bore.heat_wall = millimetres(20);
    CHECK(
        sample.cautions() ==
        Lines{"pin | before | yes | Check heat_wall: preheat is taken for less than the wall. | heat_wall is "
              "20.0 mm, the wall after the skim 30.0 mm | own"});
    sample.bore.heat_wall = millimetres(30);
    CHECK(sample.cautions().empty());
    sample.heat.not_the_grade = "C 0.6 % is over the 0.5 % of C45";
    CHECK(sample.cautions() ==
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
    CHECK(sample.cautions() ==
          Lines{"pin | before | yes | Do not go without preheat: a graph asks for it and gives no figure. | "
                "combined thickness over its limit | practice"});
}

TEST_CASE("a richer certificate of unknown metal is told") {
    Sample sample;
    sample.heat.unknown_metal = true;
    sample.bore.magnetic = true;
    sample.heat.not_the_grade = "Ni 2 % is over the 0.3 % of 4140, which unknown metal counts as";
    REQUIRE(sample.cautions().size() == 2);
    CHECK(sample.cautions()[1] ==
          "pin | before | yes | Ask what the metal is: its certificate shows more than 4140, which unknown "
          "metal counts as. The rules count beside the rows. | Ni 2 % is over the 0.3 % of 4140, which unknown "
          "metal counts as | practice");
}

TEST_CASE("where the approved procedure goes further than others allow, both figures are told") {
    Sample sample;
    Preheat& preheat = sample.heat.preheat;
    preheat.approved = "P-12";
    preheat.interpass_max = asked(300, "the approved procedure P-12");
    preheat.overruled.interpass_max = asked(225, "the table for 400HB");
    preheat.post_heat = PostHeat{asked(240, "the approved procedure P-12"), in_si<Time>(3600), {}, true};
    preheat.overruled.hold_most = asked(200, "what its tempering allows");
    preheat.overruled.post_heat = PostHeat{asked(250, "the rules of the family"), in_si<Time>(7200), {}, false};
    CHECK(sample.cautions() ==
          Lines{"pin | before | yes | The approved procedure P-12 lets a ring begin at 300 °C, yet the table "
                "for 400HB ends at 225 °C: ask its author before the first arc. | the approved maximum is over "
                "a document's | practice",
                "pin | before | yes | The approved procedure P-12 holds at 240 °C after welding, which softens "
                "metal that should stay under 200 °C: ask its author before the first arc. | the hold is "
                "within 50 K of its tempering | practice",
                "pin | before | yes | The approved procedure P-12 holds at 240 °C for 1 h 00 min after welding, yet "
                "the rules of the family ask for 250 °C for 2 h 00 min: ask its author before the first arc. | the "
                "approved hold is colder or shorter | practice"});
}

TEST_CASE("stainless filler on ferritic steel has a maximum of its own") {
    Sample sample;
    sample.heat.austenitic_on_ferritic = true;
    CHECK(sample.cautions() ==
          Lines{"pin | before | yes | From the second layer on begin no ring over 175 °C: the filler is "
                "stainless, and hot it cracks. Let the first layer melt as little of the steel as can be: "
                "mixed in, it makes it brittle. | stainless filler on ferritic steel; the limits here are of "
                "the steel | practice"});
}
