#include <catch2/catch.hpp>

#include <string>

#include <ringfill/document/document.hpp>
#include <ringfill/report/json/json.hpp>
#include <ringfill/say/heat_limits.hpp>
#include <ringfill/say/heat_sentences.hpp>
#include <ringfill/units/metric.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

/// C45 under an approved procedure, with more fields of the bore.
Plan approved_plan(const std::string& fields) {
    return plan(
        job_from(R"json({ "format": "ringfill-job/1", "title": "Stick pins, drainage ship 2", "units": "mm",
      "procedures": { "main": { "filler": "steel/ER70S-6", "wire": "1 mm", "gas": "M21", "wire_feed": "8 m/min",
        "travel": "350 mm/min", "approved": { "reference": "P-7", "preheat_min": "100 degC",
                                              "interpass_max": "200 degC" } } },
      "bores": [{ "name": "pin left", "base": "steel/C45", "finish_diameter": "90 mm", "length": "100 mm", )json" +
                 fields + R"json( "worn": { "diameter": "93.4 mm" } }] })json"),
        shop());
}

std::string head_of(const Plan& plan) {
    std::string text;
    for (const Sentence& sentence : head_sentences(plan))
        text += (sentence.stands == Stands::stop ? "! " : "") + sentence.text + '\n';
    return text;
}

} // namespace

TEST_CASE(
    "an approved procedure waits while the metal is in doubt, and none of its figures stands at the head") {
    const Plan doubtful = approved_plan(R"("magnetic": false,)");
    CHECK(head_of(doubtful) == "! STOP: identify the metal before any heat: pin left.\n"
                               "Approved procedure P-7 waits until the metal is known: pin left.\n"
                               "Preheat no figure before the metal is known: pin left.\n");
    CHECK(head_of(approved_plan(R"("magnetic": true,)")) ==
          "Approved procedure P-7 rules: pin left.\n"
          "Preheat at least 100 °C; no ring begins over 200 °C: pin left.\n");
}

TEST_CASE("the result tells the doubt, and no minimum with it") {
    const Document result = {"plan", "", plan_document(approved_plan(R"("magnetic": false,)"))};
    CHECK(*value_at(result, "bores[0].heat.doubt").text() ==
          "a magnet does not hold, so it is no ferritic and no martensitic steel");
    for (const Member& member : *value_at(result, "bores[0].heat").object())
        CHECK(member.name != "preheat_min_degC");
}

// Bronze on grey iron: no method names a temperature, and one asks for preheat all the same.
TEST_CASE("a preheat that is needed without a figure has none in the words and none in the result") {
    const Plan made = plan(
        job_from(R"json({ "format": "ringfill-job/1", "title": "Stick pins, drainage ship 2", "units": "mm",
      "procedures": { "main": { "filler": "bronze/ERCuSi-A", "wire": "1 mm", "gas": "I1", "wire_feed": "7 m/min",
                                "current": "140 A", "voltage": "22 V", "travel": "350 mm/min" } },
      "bores": [{ "name": "pin left", "base": "cast_iron/EN-GJL-250", "finish_diameter": "90 mm",
                  "length": "100 mm", "boss_diameter": "180 mm", "worn": { "diameter": "93.4 mm" } }] })json"),
        shop());
    const BoreHeat& heat = made.bores[0].heat;
    CHECK(heat.preheat.state == PreheatState::needed_without_figure);
    CHECK(head_of(made) == "Preheat needed, no figure known: pin left.\n");
    CHECK(heat_sentences(heat, UnitSystem::metric).front().text ==
          "Preheat: needed, and no method here says how much. It is never left out: take the figure from an "
          "approved procedure.");
    const Document result = {"plan", "", plan_document(made)};
    CHECK(*value_at(result, "bores[0].heat.no_preheat").flag() == false);
    for (const Member& member : *value_at(result, "bores[0].heat").object()) {
        CHECK(member.name != "preheat_min_degC");
        CHECK(member.name != "preheat_by");
    }
    for (const Working& work : made.working)
        CHECK(work.figure != "bores[0].heat.preheat_min_degC");
}

// The approved 20 °C over 15 °C stops the work; its figures stand in the stop alone, as typed.
TEST_CASE("a contradictory window shows no figure to act on") {
    const auto head_with = [](const std::string& base, const std::string& filler) {
        return head_of(plan(
            job_from(
                R"json({ "format": "ringfill-job/1", "title": "Stick pins, drainage ship 2", "units": "mm",
      "procedures": { "main": { "filler": ")json" +
                filler + R"json(", "wire": "1.2 mm", "gas": "I1", "wire_feed": "6 m/min",
                                "current": "180 A", "voltage": "24 V", "travel": "320 mm/min",
                                "approved": { "reference": "U2", "preheat_min": "10 degC", "interpass_max": "15 degC" } } },
      "bores": [{ "name": "pin left", "base": ")json" +
                base + R"json(", "finish_diameter": "90 mm",
                  "length": "100 mm", "boss_diameter": "180 mm", "worn": { "diameter": "93.4 mm" } }] })json"),
            shop()));
    };
    const std::string iron = head_with("cast_iron/EN-GJS-600-3", "bronze/ERCuAl-A2");
    CHECK_THAT(iron, Catch::StartsWith(
                         "! STOP: contradictory, approved at least 20 °C, approved no ring over 15 °C, "));
    CHECK_THAT(iron, Catch::Contains("Preheat no figure before the two limits are settled: pin left.\n"));
    const std::string manganese = head_with("manganese_steel/A128-A", "manganese_steel/ERCFeMnCr");
    CHECK_THAT(manganese, Catch::StartsWith("! STOP: contradictory"));
    CHECK_THAT(manganese,
               Catch::Contains("Preheat no figure before the two limits are settled: pin left.\n"));
}

TEST_CASE("without any figure the head sends to an approved procedure, and names none as told") {
    const BoreHeat nothing;
    const Sentence limits = heat_limits(nothing, UnitSystem::metric);
    CHECK(limits.text == "no figure can be given: take it from an approved procedure");
    CHECK(limits.figures.empty());
}

// They were rounded where they were decided; what a document prints and what is approved stands as it is.
TEST_CASE("limits are shown as they were decided, and nothing is rounded again") {
    Preheat preheat;
    preheat.minimum = AskedTemperature{celsius(79), "a document", "practice"};
    preheat.interpass_max = AskedTemperature{celsius(177), "a document", "practice"};
    const ShownLimits shown = shown_limits(preheat, UnitSystem::metric);
    CHECK(shown.minimum == "79 °C");
    CHECK(shown.maximum == "177 °C");
}
