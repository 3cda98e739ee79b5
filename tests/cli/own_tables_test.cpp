#include <catch2/catch.hpp>

#include <filesystem>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>

#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Matchers::Contains;

namespace {

const std::string job = std::string(RINGFILL_ROOT) + "/cli/demo/dredger-pivots.json";

/// A workspace with tables of the user.
struct OwnTables : Workspace {
    OwnTables() { std::filesystem::create_directories(path("mine/families")); }

    Outcome told(std::vector<std::string> words) const {
        words.insert(words.end(), {"--tables", "mine"});
        return run(*this, {.words = words});
    }
};

/// C45 of the product's table with another maximum between rings and another practice.
constexpr const char* soft_c45 =
    R"({ "format": "ringfill-family/1", "family": "steel", "description": "mine", "bases": { "C45": {
  "standard": "EN ISO 683-1", "group": "carbon_steel", "structure": "ferritic", "density_kg_m3": [7850, "EN1993-1-2"],
  "composition_pct": { "C": [0.50, "practice"], "Mn": [0.80, "practice"] },
  "practice": { "rows": [{ "practice_degC": [20, 20, "practice"] }] },
  "interpass_max_degC": [700, "practice"], "preheat_groups": ["ASME B31.3-2014 P-1"], "listed_in": [] } } })";

} // namespace

TEST_CASE(
    "a figure that a table of the user replaces is named on every view and is a caution with both figures") {
    const OwnTables own;
    own.write("mine/cutting.json", R"({ "format": "ringfill-cutting/1", "description": "mine",
        "cutting": { "rough_below_degC": [600, "practice"] } })");
    for (const char* view : {"take", "passes", "heat", "boring", "day", "quote", "cautions", "check"}) {
        CAPTURE(view);
        const Outcome outcome = own.told({view, job});
        CHECK(outcome.status == 0);
        CHECK_THAT(outcome.out,
                   Contains("TABLE mine/cutting.json replaces in cutting: \"rough_below_degC\".\n"));
    }
    CHECK_THAT(own.told({"sheet", job}).out,
               Contains("TABLE mine/cutting.json replaces in cutting: &quot;rough_below_degC&quot;."));
    CHECK_THAT(own.told({"take", job}).out, Contains("(temperature to rough under 600 °C, ours 60 °C)"));
    CHECK_THAT(run(own, {.words = {"take", job}}).out, !Contains("TABLE"));
}

TEST_CASE("the result lists what tables of the user replace, and what of it is less careful") {
    const OwnTables own;
    own.write("mine/families/steel.json", soft_c45);
    own.write("mine/packs.json", R"({ "format": "ringfill-packs/1", "description": "mine",
        "wire": { "5 kg spool": { "units": "mm", "content_kg": [5, "practice"] },
                  "7 kg spool": { "units": "mm", "content_kg": [7, "practice"] } } })");
    const Document plan = parse("plan", own.told({"take", job, "--json"}).out, Origin::job);
    const auto text = [&](const std::string& path) { return *value_at(plan, path).text(); };
    REQUIRE(plan.root.find("tables")->list()->size() == 2);
    CHECK(text("tables[0].file") == "mine/packs.json");
    CHECK(text("tables[0].table") == "packs.wire");
    CHECK(text("tables[0].row") == "5 kg spool");
    CHECK(text("tables[0].fields[0]") == "content_kg");
    CHECK(value_at(plan, "tables[0].lowered").list()->empty());
    CHECK(text("tables[1].file") == "mine/families/steel.json");
    CHECK(text("tables[1].table") == "families/steel.bases");
    CHECK(text("tables[1].row") == "C45");
    std::vector<std::string> lowered;
    for (const Value& one : *value_at(plan, "tables[1].lowered").list())
        lowered.push_back(fmt::format("{} {} {}", *one.find("field")->text(), *one.find("ours")->text(),
                                      *one.find("theirs")->text()));
    CHECK_THAT(lowered, Catch::Matchers::VectorContains(std::string("practice.rows 315 °C 20 °C")) &&
                            Catch::Matchers::VectorContains(std::string("interpass_max_degC 350 °C 700 °C")));
    CHECK_THAT(own.told({"heat", job}).out, Contains("TABLE mine/families/steel.json replaces in"));
    const Document without = parse("plan", run(own, {.words = {"take", job, "--json"}}).out, Origin::job);
    CHECK(without.root.find("tables")->list()->empty());
}

TEST_CASE("a table of the user that cannot be meant is refused whole") {
    const auto refused = [](const std::string& file, const std::string& content, int status,
                            const std::string& told) {
        const OwnTables own;
        own.write("mine/" + file, content);
        const Outcome outcome = own.told({"take", job});
        CAPTURE(file);
        CHECK(outcome.status == status);
        CHECK(outcome.out.empty());
        CHECK(outcome.err == told);
    };
    refused("pack.json", "{}", 3, "mine/pack.json: is no table that is read; did you mean \"packs.json\"?\n");
    refused("standing-times.json", "{}", 3,
            "mine/standing-times.json: is no table that is read; did you mean \"standing_times.json\"?\n");
    refused(
        "sticks.json", R"({ "format": "ringfill-sticks/1", "description": "mine", "sticks": {
  "150 °C stick": { "units": "mm", "rating_degC": [260, "practice"] } } })",
        3,
        "mine/sticks.json:2:51: sticks.150 °C stick.rating_degC: is not the number in the name of the stick; "
        "write the rating that stands on it, in both\n"
        "      \"150 °C stick\": { \"units\": \"mm\", \"rating_degC\": [260, \"practice\"] } } }\n"
        "                                                      ^\n");
    refused("families/steel.json",
            R"({ "format": "ringfill-family/1", "family": "steel", "description": "mine",
  "usual": { "solid": { "efficiency": [0.80, "practice"] } } })",
            3,
            "mine/families/steel.json:2:25: usual.solid.efficiency: fills no row of this file, and never "
            "those of "
            "another; write the rows that you change whole, or take it out\n"
            "      \"usual\": { \"solid\": { \"efficiency\": [0.80, \"practice…\n"
            "                            ^\n");
}
