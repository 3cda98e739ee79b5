#include <catch2/catch.hpp>

#include "document/fault_words.hpp"
#include "material/family_text.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("what the refusals below start from is accepted") {
    CHECK(refused(filler_text(solid, R"("1.0": {})")) == "accepted\n");
    CHECK(refused(filler_text(cored, R"("1.2": {"linear_mass_kg_m": [0.0072, "practice"]})")) ==
          "accepted\n");
    CHECK(refused(family_text(fmt::format("\"bases\": {{\"B\": {{{}}}}}", base))) == "accepted\n");
}

TEST_CASE("a table of another family or version is refused") {
    CHECK(refused(family_text("\"bases\": {}", "steel")) ==
          "alloy.json:1:43: family: \"steel\" is not the family of this file, alloy; name the file after its "
          "family\n");
    CHECK(refused(R"({"format": "ringfill-family/2", "family": "alloy", "description": "d"})") ==
          "alloy.json:1:12: format: \"ringfill-family/2\" is not a word used here; did you mean "
          "\"ringfill-family/1\"?\n");
    CHECK(refused("7") == "alloy.json:1:1: 7" + no_object("a number", "a material family") + "\n");
}

TEST_CASE("a value without a source and one with an unknown source are refused") {
    CHECK(refused(family_text("\"bases\": {\"B\": {\n\"standard\": \"s\", \"structure\": \"ferritic\", "
                              "\"density_kg_m3\": 7850}}")) ==
          "alloy.json:2:60: bases.B.density_kg_m3: 7850" + no_source + "\n");
    CHECK(refused(family_text("\"bases\": {\"B\": {\n\"standard\": \"s\", \"structure\": \"ferritic\", "
                              "\"density_kg_m3\": [7850, \"practise\"]}}")) ==
          "alloy.json:2:67: bases.B.density_kg_m3: \"practise\" is not a known source; did you mean "
          "\"practice\"?\n");
    CHECK(refused(family_text(
              fmt::format("\"bases\": {{\"B\": {{{},\n\"composition_pct\": {{\"C\": 0.4}}}}}}", base))) ==
          "alloy.json:2:26: bases.B.composition_pct.C: 0.4" + no_source + "\n");
    CHECK(
        refused(family_text(fmt::format("\"bases\": {{\"B\": {{{},\n\"composition_pct\": 0.4}}}}", base))) ==
        "alloy.json:2:20: bases.B.composition_pct: 0.4 is a number, not an object in braces; write it like "
        "{ \"C\": [0.46, \"ISO683-1\"] }\n");
}

TEST_CASE("a missing required field is named with a sample") {
    CHECK(refused(family_text("\"bases\": {\n\"B\": {}}")) ==
          "alloy.json:2:6: bases.B.standard: is missing; write \"standard\": \"EN ISO 683-1\"\n"
          "alloy.json:2:6: bases.B.density_kg_m3: is missing; write \"density_kg_m3\": [7850, "
          "\"EN1993-1-2\"]\n"
          "alloy.json:2:6: bases.B.structure: is missing; write \"structure\": \"ferritic\"\n");
}

TEST_CASE("a structure that is none and absurd figures of a metal are refused") {
    const auto metal = [](const std::string& members) {
        return refused(family_text(fmt::format(
            "\"bases\": {{\"B\": {{\"standard\": \"s\", \"density_kg_m3\": [7850, \"practice\"],\n{}}}}}",
            members)));
    };
    CHECK(metal(R"("structure": "ferrite")") ==
          "alloy.json:2:14: bases.B.structure: \"ferrite\" is not a word used here; did you mean "
          "\"ferritic\"?\n");
    CHECK(metal(R"("structure": "ferritic", "yield_MPa": [0, "practice"])") ==
          "alloy.json:2:40: bases.B.yield_MPa: 0" + out_of_range("over 0 and at most 5000") + "\n");
    CHECK(metal(R"("structure": "ferritic", "interpass_max_degC": [423.15, "practice"])") == "accepted\n");
    CHECK(metal(R"("structure": "ferritic", "interpass_max_degC": [750, "practice"])") ==
          "alloy.json:2:49: bases.B.interpass_max_degC: 750" + out_of_range("from -60 to 700") + "\n");
}

TEST_CASE("a wire without its mass is refused") {
    CHECK(refused(filler_text(cored, R"("1.2": {})")) ==
          "alloy.json:3:17: fillers.F.diameters_mm: gives no linear_mass_kg_m for 1.2; cored wire needs its "
          "mass per "
          "metre\n");
    const std::size_t from = solid.find("\"wire_density");
    const std::string massless = std::string(solid).erase(from, solid.find('\n') - from);
    CHECK(refused(filler_text(massless, R"("1.0": {})")) ==
          "alloy.json:1:89: fillers.F.wire_density_kg_m3: is missing; solid wire needs the density of the "
          "wire\n");
}

TEST_CASE("a range with its ends swapped or without its source is refused") {
    CHECK(refused(filler_text(solid, "\"1.0\": {\"window\": {\n\"current_A\": [260, 70, \"practice\"]}}")) ==
          "alloy.json:5:14: fillers.F.diameters_mm.1.0.window.current_A:" + swapped_ends + "\n");
    CHECK(refused(filler_text(solid, "\"1.0\": {\"window\": {\n\"current_A\": [70, 260]}}")) ==
          "alloy.json:5:14: fillers.F.diameters_mm.1.0.window.current_A: is not a range with its source; "
          "write two numbers "
          "with their source such as [2, 12, \"practice\"]\n");
}

TEST_CASE("a feed table rises in feed and current") {
    const auto table = [](double feed, double current) {
        return refused(filler_text(solid, fmt::format(R"("1.0": {{"feed_table": [
{{"wire_feed_m_min": [6, "practice"], "current_A": [150, "practice"]}},
{{"wire_feed_m_min": [{}, "practice"], "current_A": [{}, "practice"]}}]}})",
                                                      feed, current)));
    };
    const std::string falls =
        "alloy.json:6:1: fillers.F.diameters_mm.1.0.feed_table[1]: does not rise over the point "
        "before it; list the points with feed and current rising\n";
    CHECK(table(12, 250) == "accepted\n");
    CHECK(table(5, 250) == falls);
    CHECK(table(6, 250) == falls);
    CHECK(table(12, 150) == falls);
    CHECK(table(12, 140) == falls);
}

TEST_CASE("a diameter stands as the name of its figures") {
    const std::string nameless =
        R"(: does not stand under a diameter; write the diameter in mm as the name, such as "1.0")";
    for (const std::string name : {"1,0", "", "-1", "0", "11", "nan", "1.0 mm", "thin"}) {
        INFO(name);
        const std::string path = name.empty() ? "fillers.F.diameters_mm." : "fillers.F.diameters_mm." + name;
        CHECK(refused(filler_text(solid, fmt::format("\n\"{}\": {{}}", name))) ==
              fmt::format("alloy.json:5:{}: {}{}\n", name.size() + 5, path, nameless));
    }
}

TEST_CASE("gases are named by their designation") {
    CHECK(refused(filler_text(R"("standard": "s", "form": "solid", "wire_density_kg_m3": [7850, "practice"],
"deposit_density_kg_m3": [7800, "practice"], "efficiency": [0.9, "practice"], "bead_ratio": [3, "practice"],
"stick_out_mm": [12, "practice"], "gases": [21])",
                              R"("1.0": {})")) ==
          "alloy.json:3:45: fillers.F.gases[0]: 21 is not a gas; write its designation, such as \"M21\"\n");
}
