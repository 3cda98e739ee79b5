#include <catch2/catch.hpp>

#include <ringfill/caution/replaced_rules.hpp>
#include <ringfill/plan/plan.hpp>
#include <ringfill/say/heat_limits.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const std::string job_text = R"({ "format": "ringfill-job/1", "title": "Pivots", "units": "mm",
  "procedures": { "main": { "filler": "steel/ER70S-6", "wire": "1 mm", "gas": "M21", "wire_feed": "8 m/min",
                            "travel": "350 mm/min" } },
  "bores": [{ "name": "pin", "base": "steel/C45", "finish_diameter": "90 mm", "length": "100 mm",
              "worn": { "diameter": "93.4 mm" } }] })";

const ReplacedRow hot_roughing{"mine/cutting.json",
                               "",
                               "cutting",
                               "rough_below_degC",
                               {"rough_below_degC"},
                               {{"rough_below_degC", "temperature to rough under", "degC", 60.0, 600.0}}};

std::vector<std::string> told_of(const std::vector<ReplacedRow>& rows,
                                 UnitSystem units = UnitSystem::metric) {
    CautionList list{units};
    replaced_rules(list, rows, {"steel"});
    std::vector<std::string> all;
    for (const Caution& one : list.found)
        all.push_back(one.text + " (" + one.because + ")");
    return all;
}

} // namespace

TEST_CASE("a row that is less careful than ours is a caution with both figures and the file") {
    const std::string told =
        "\"rough_below_degC\" of cutting in mine/cutting.json is less careful than our own "
        "table: have somebody qualified stand by it, or take it out. ";
    CHECK(told_of({hot_roughing}) ==
          std::vector<std::string>{told + "(temperature to rough under 600 °C, ours 60 °C)"});
    CHECK(told_of({hot_roughing}, UnitSystem::inch) ==
          std::vector<std::string>{told + "(temperature to rough under 1112 °F, ours 140 °F)"});
}

TEST_CASE("a row that is as careful is none, nor one of a family that the job does not name") {
    ReplacedRow careful = hot_roughing;
    careful.lowered.clear();
    CHECK(told_of({careful}).empty());
    ReplacedRow bronze = hot_roughing;
    bronze.family = "bronze";
    CHECK(told_of({bronze}).empty());
    bronze.family = "steel";
    CHECK(told_of({bronze}).size() == 1);
}

TEST_CASE("what a figure is is shown as people write it") {
    CHECK(shown_figure(Value(8.0), "ml/100 g", UnitSystem::metric) == "8 ml/100 g");
    CHECK(shown_figure(Value(0.5), "", UnitSystem::metric) == "0.5");
    CHECK(shown_figure(Value(true), "", UnitSystem::metric) == "yes");
    CHECK(shown_figure(Value("with_buffer"), "", UnitSystem::metric) == "with_buffer");
    CHECK(shown_figure(Value(), "degC", UnitSystem::metric) == "none");
}

TEST_CASE("a plan carries what tables of the user replace, and a head names each row once") {
    CHECK(plan(job_from(job_text), shop()).tables.empty());
    Shop changed = shop();
    changed.replaced = {hot_roughing,
                        {"mine/packs.json", "", "packs.wire", "15 kg spool", {"content_kg"}},
                        {"mine/packs.json", "", "packs.wire", "5 kg spool", {"content_kg", "stocked"}}};
    const Plan made = plan(job_from(job_text), changed);
    CHECK(made.tables.size() == 3);
    CHECK(replaced_in_words(made.tables) ==
          std::vector<std::string>{
              "TABLE mine/cutting.json replaces in cutting: \"rough_below_degC\".",
              "TABLE mine/packs.json replaces in packs.wire: \"15 kg spool\" (content_kg), \"5 kg spool\" "
              "(content_kg, stocked)."});
    CHECK(std::count_if(made.cautions.begin(), made.cautions.end(), [](const Caution& one) {
              return one.because == "temperature to rough under 600 °C, ours 60 °C";
          }) == 1);
    const Sentences head = head_sentences(made);
    CHECK(std::count_if(head.begin(), head.end(),
                        [](const Sentence& one) { return one.text.starts_with("TABLE mine/"); }) == 2);
}
