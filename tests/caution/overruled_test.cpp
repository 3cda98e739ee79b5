#include <catch2/catch.hpp>

#include <utility>

#include <fmt/format.h>

#include "caution/preheat_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("with an approved procedure a contradiction goes to its author, with his figures as typed") {
    PreheatSample sample;
    sample.heat.preheat.closed = true;
    sample.heat.preheat.approved = "P-12";
    sample.heat.preheat.minimum = asked(350, "the approved procedure P-12");
    sample.heat.preheat.minimum->source = "approved";
    CHECK(sample.stops() == Lines{"pin | before | yes | Contradictory: ask the author of the approved "
                                  "procedure P-12 before the first arc. "
                                  "Neither limit is changed, and no figure is given to act on. | between 350 "
                                  "°C by the approved procedure "
                                  "P-12 [approved] at least and what a document asks [practice] at most no "
                                  "ring could begin | practice"});
}

TEST_CASE("a method that applies and asks for more than the approved procedure is told") {
    PreheatSample sample;
    sample.heat.preheat.approved = "P-12";
    sample.method("a table", 150, true);
    CHECK(sample.cautions().empty());
    sample.method("a rule", 151, true);
    sample.method("a stricter rule", 181, true);
    CHECK(sample.cautions() ==
          Lines{"pin | before | yes | The approved procedure P-12 rules with 150 °C, yet a stricter rule "
                "asks for "
                "181 °C: ask its author before the first arc. | a method that applies asks for more than the "
                "approved procedure | practice"});
}

TEST_CASE("where the approved procedure goes further than others allow, both figures are told") {
    PreheatSample sample;
    Preheat& preheat = sample.heat.preheat;
    preheat.approved = "P-12";
    preheat.interpass_max = asked(300, "the approved procedure P-12");
    preheat.overruled.interpass_max = asked(225, "the table for 400HB");
    preheat.post_heat = PostHeat{asked(240, "the approved procedure P-12"), in_si<Time>(3600), {}, true};
    preheat.overruled.post_heat =
        PostHeat{asked(250, "the rules of the family"), in_si<Time>(7200), {}, false};
    CHECK(
        sample.cautions() ==
        Lines{"pin | before | yes | The approved procedure P-12 lets a ring begin at 300 °C, yet the table "
              "for 400HB ends at 225 °C: ask its author before the first arc. | the approved maximum is the "
              "higher one | practice",
              "pin | before | yes | The approved procedure P-12 holds at 240 °C for 1 h 00 min after "
              "welding, yet "
              "the rules of the family ask for 250 °C for 2 h 00 min: ask its author before the first arc. | "
              "the "
              "approved hold is colder or shorter | practice"});
}

TEST_CASE("an approved hold of bronze, nickel and cast iron is questioned") {
    for (const auto& [structure, words] :
         {std::pair("copper", "yet bronze is left to cool in the open"),
          std::pair("nickel", "yet nickel metal is left to cool in the open"),
          std::pair("cast_iron", "yet cast iron is cooled slowly and not held")}) {
        PreheatSample sample;
        sample.heat.structure = structure;
        sample.bore.part_mass = in_si<Mass>(800); // else it is asked for
        sample.heat.preheat.approved = "P-12";
        CHECK(sample.cautions().empty());
        sample.heat.preheat.post_heat =
            PostHeat{asked(400, "the approved procedure P-12"), in_si<Time>(7200), {}, true};
        REQUIRE(sample.cautions().size() == 1);
        CHECK(sample.cautions()[0].find(fmt::format("holds at 400 °C after welding, {}: ask its author",
                                                    words)) != std::string::npos);
    }
}

TEST_CASE("the rules of the family end, a table ends") {
    PreheatSample sample;
    sample.heat.preheat.approved = "P-12";
    sample.heat.preheat.overruled.interpass_max = asked(60, "the rules of the family");
    sample.heat.preheat.overruled.interpass_max->by_family = true;
    CHECK(sample.cautions().at(0).find("yet the rules of the family end at 60 °C") != std::string::npos);
}

TEST_CASE("hardened steel stops the work where a hold softens it, until its author has confirmed it") {
    PreheatSample sample;
    sample.heat.preheat.approved = "P-12";
    sample.heat.preheat.post_heat =
        PostHeat{asked(250, "the approved procedure P-12"), in_si<Time>(7200), {}, true};
    sample.heat.preheat.overruled.hold_most = asked(225, "what its hardness bears");
    CHECK(sample.cautions().empty());
    CHECK(
        sample.stops() ==
        Lines{"pin | before | yes | Stop: this steel softens over 225 °C, yet the approved procedure P-12 "
              "asks for a hold at 250 °C after welding. Ask its author before any flame and any arc; nothing "
              "to heat it with is counted. | what its hardness bears; hardness that is lost does not come "
              "back | practice"});
    sample.heat.preheat.closed = true;
    CHECK(sample.stops().size() == 2);
    sample.heat.preheat.closed = false;
    sample.heat.preheat.approved_confirmed = true;
    CHECK(sample.stops().empty());
}

TEST_CASE("an approved preheat or hold of austenitic metal is questioned") {
    PreheatSample sample;
    sample.heat.structure = "austenitic";
    sample.heat.preheat.approved = "P-12";
    sample.heat.preheat.post_heat =
        PostHeat{asked(250, "the approved procedure P-12"), in_si<Time>(7200), {}, true};
    CHECK(
        sample.cautions() ==
        Lines{
            "pin | before | yes | The approved procedure P-12 asks for a preheat of 150 °C, yet austenitic "
            "metal is harmed by it: ask its author before the first arc. | it cracks or goes brittle, hot "
            "for "
            "long; it is welded hand-warm | practice",
            "pin | before | yes | The approved procedure P-12 holds at 250 °C after welding, yet austenitic "
            "metal is never held hot: ask its author before the first arc. | it cracks or goes brittle, hot "
            "for long | practice"});
    sample.heat.preheat.minimum = asked(49, "the approved procedure P-12"); // hand-warm
    sample.heat.preheat.post_heat.reset();
    CHECK(sample.cautions().empty());
}
