#include <catch2/catch.hpp>

#include <sstream>
#include <string>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/table/gases.hpp>
#include <ringfill/table/packs.hpp>
#include <ringfill/table/wear_parts.hpp>

#include "document/fault_words.hpp"
#include "document/refused.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const Bibliography known = {{"practice", {"common practice", "-", "-", "practice", "memory"}},
                            {"ISO544", {"EN ISO 544", "2003", "-", "standard", "memory"}}};

/// What a table is refused with, a line a fault, without the excerpts; "accepted" when it loads.
template <class Table>
std::string refused(Table (*read)(const std::vector<Document>&, const Bibliography&),
                    const std::string& text) {
    const std::string whole =
        refusal(Origin::table, [&] { read({parse("t.json", text, Origin::table)}, known); });
    std::string lines;
    std::istringstream rest(whole);
    for (std::string line; std::getline(rest, line);)
        if (!line.starts_with("    "))
            lines += line + '\n';
    return lines;
}

std::string packs(const std::string& members) {
    return refused(read_packs,
                   fmt::format(R"({{"format": "ringfill-packs/1", "description": "d", {}}})", members));
}

std::string spool(const std::string& members) {
    return packs(fmt::format(R"("wire": {{"a": {{{}}}}})", members));
}

} // namespace

TEST_CASE("a value without a source does not load") {
    CHECK(spool(R"("units": "mm", "content_kg": [15, "ISO544"])") == "accepted\n");
    CHECK(spool(R"("units": "mm", "content_kg": 15)") ==
          "t.json:1:96: wire.a.content_kg: 15" + no_source + "\n");
    CHECK(spool(R"("units": "mm", "content_kg": [15])") ==
          "t.json:1:96: wire.a.content_kg:" + no_source + "\n");
    CHECK(spool(R"("units": "mm", "content_kg": [15, 1])") ==
          "t.json:1:101: wire.a.content_kg: 1 is not a source key; write the key of a source in quotes\n");
}

TEST_CASE("an unknown source is answered with the nearest") {
    CHECK(spool(R"("units": "mm", "content_kg": [15, "ISO54"])") ==
          "t.json:1:101: wire.a.content_kg: \"ISO54\" is not a known source; did you mean \"ISO544\"?\n");
    CHECK(spool(R"("units": "mm", "content_kg": [15, "x"])") ==
          "t.json:1:101: wire.a.content_kg: \"x\" is not a known source; known here: ISO544, practice\n");
    CHECK(refused(read_gases,
                  R"({"format": "ringfill-gases/1", "description": "d", "gases": {"I1": {"words": "argon",
        "holds": "argon", "flow_L_min_per_mm": [12, "practice"], "composition_source": "ISO54"}}})") ==
          "t.json:2:88: gases.I1.composition_source: \"ISO54\" is not a known source; did you mean "
          "\"ISO544\"?\n");
}

TEST_CASE("a number that is none or out of range is refused") {
    CHECK(spool(R"("units": "mm", "content_kg": ["15", "ISO544"])") ==
          "t.json:1:97: wire.a.content_kg: \"15\" is a text, not a plain number; write it without quotes and "
          "unit\n");
    CHECK(spool(R"("units": "mm", "content_kg": [-15, "ISO544"])") ==
          "t.json:1:97: wire.a.content_kg: -15" + out_of_range("from 0.001 to 2000") + "\n");
}

TEST_CASE("missing and unknown fields of a row are all named") {
    CHECK(spool(R"("unit": "mm")") ==
          "t.json:1:66: wire.a.units: is missing; write \"units\": \"mm\"\n"
          "t.json:1:66: wire.a.content_kg: is missing; write \"content_kg\": [15, \"ISO544\"]\n"
          "t.json:1:67: wire.a.unit: is not a field of a spool; did you mean \"units\"?\n");
}

TEST_CASE("the signature comes first") {
    CHECK(refused(read_packs, R"({"format": "ringfill-packs/2", "description": "d"})") ==
          "t.json:1:12: format: \"ringfill-packs/2\" is not a word used here; did you mean "
          "\"ringfill-packs/1\"?\n");
    CHECK(refused(read_packs, R"({"description": "d"})") ==
          "t.json:1:1: format: is missing; write \"format\": \"ringfill-packs/1\"\n");
    CHECK(refused(read_packs, R"({"format": "ringfill-packs/1"})") ==
          "t.json:1:1: description: is missing; write \"description\": \"what it holds\"\n");
    CHECK(refused(read_packs, "[]") == "t.json:1:1:" + no_object("a list", "the table of packs") + "\n");
    CHECK(packs(R"("wires": {})") ==
          "t.json:1:52: wires: is not a field of the table of packs; did you mean \"wire\"?\n");
}

TEST_CASE("a figure of the wear parts that no file gives is missing") {
    CHECK(refused(read_wear_parts, R"({"format": "ringfill-wear_parts/1", "description": "d",
        "parts": {"contact_tip": {"arc_life_h": [2, "practice"]}, "nozzle": {}, "liner": {"length_m": [4, "practice"]}}})") ==
          "t.json:1:1: parts.nozzle.arc_life_h: is missing; write it with its source\n"
          "t.json:1:1: parts.liner.wire_life_kg: is missing; write it with its source\n");
}

TEST_CASE("a mass in the name of a pack is what it holds") {
    const auto named = [](const std::string& name, const std::string& kg) {
        return packs(R"("wire": {")" + name + R"(": {"units": "mm", "content_kg": [)" + kg +
                     R"(, "ISO544"]}})");
    };
    for (const auto& [name, kg] : std::vector<std::pair<std::string, std::string>>{{"15 kg spool", "15"},
                                                                                   {"15 kg spool", "14.5"},
                                                                                   {"33 lb spool", "14.968"},
                                                                                   {"spool 7", "15"},
                                                                                   {"a", "3"}}) {
        CAPTURE(name);
        CHECK(named(name, kg) == "accepted\n");
    }
    for (const auto& [name, kg] : std::vector<std::pair<std::string, std::string>>{
             {"15 kg spool", "18"}, {"15 lb spool", "15"}, {"15kg spool", "1.5"}}) {
        CAPTURE(name);
        CHECK(named(name, kg).find(
                  "content_kg: is not the mass in the name of the pack; write the mass that it "
                  "holds, in both") != std::string::npos);
    }
}
