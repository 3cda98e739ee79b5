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

// A closed window does not hide what the metal asks for: the approved 20 °C over 15 °C stops the work, and
// bronze on nodular iron still needs preheat, and manganese steel still none.
TEST_CASE("a contradictory window leaves in the words what the metal asks for") {
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
    CHECK_THAT(iron, Catch::StartsWith("! STOP: contradictory"));
    CHECK_THAT(iron,
               Catch::Contains("Preheat needed, no figure known; no ring begins over 15 °C: pin left.\n"));
    const std::string manganese = head_with("manganese_steel/A128-A", "manganese_steel/ERCFeMnCr");
    CHECK_THAT(manganese, Catch::StartsWith("! STOP: contradictory"));
    CHECK_THAT(manganese,
               Catch::Contains("Preheat none, dry and hand-warm; no ring begins over 15 °C: pin left.\n"));
}

TEST_CASE("without any figure the head sends to an approved procedure, and names none as told") {
    const BoreHeat nothing;
    const Sentence limits = heat_limits(nothing, UnitSystem::metric);
    CHECK(limits.text == "no figure can be given: take it from an approved procedure");
    CHECK(limits.figures.empty());
}

// By hand: 300.2 °C up to the next 5 °C is 305 °C and 303.9 °C down is 300 °C; so rounded the one would lie
// over the other.
TEST_CASE("limits so near that rounding would cross them are shown exactly") {
    Preheat preheat;
    preheat.minimum = AskedTemperature{celsius(300.2), "P-7", "P-7"};
    preheat.interpass_max = AskedTemperature{celsius(303.9), "P-7", "P-7"};
    const ShownLimits near = shown_limits(preheat, UnitSystem::metric);
    CHECK(near.exact);
    CHECK(near.minimum == "300.2 °C");
    CHECK(near.maximum == "303.9 °C");
    preheat.interpass_max->value = celsius(350);
    CHECK_FALSE(shown_limits(preheat, UnitSystem::metric).exact);
}
