#include <catch2/catch.hpp>

#include <sstream>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/table/cutting.hpp>
#include <ringfill/table/shelf.hpp>
#include <ringfill/table/size_limits.hpp>
#include <ringfill/units/metric.hpp>

#include "document/fault_words.hpp"
#include "document/refused.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

namespace {

const Shelf own{{RINGFILL_TABLES}};

Bibliography sources() {
    return read_sources(table_files(own, "sources.json"));
}

/// The product's table and then a file of the user's.
Cutting corrected(const std::string& members) {
    std::vector<Document> files = table_files(own, "cutting.json");
    files.push_back(
        parse("t.json", fmt::format(R"({{"format": "ringfill-cutting/1", "description": "d", {}}})", members),
              Origin::table));
    return read_cutting(files, sources());
}

/// A refusal without its excerpts.
template <class Call>
std::string refused(const Call& call) {
    std::istringstream whole(refusal(Origin::table, call));
    std::string lines;
    for (std::string line; std::getline(whole, line);)
        if (!line.starts_with("    "))
            lines += line + '\n';
    return lines;
}

std::string steps_refused(const std::string& step) {
    return refused([&] {
        read_size_steps({parse("t.json",
                               fmt::format(R"({{"format": "ringfill-size_limits/1", "description": "d",
"sizes": {{"a": {{{}}}}}}})",
                                           step),
                               Origin::table)},
                        sources());
    });
}

} // namespace

TEST_CASE("the product's figures of cutting are in the order that a bar needs") {
    const Cutting cutting = read_cutting(table_files(own, "cutting.json"), sources());
    CHECK(cutting.finish_cut.value < cutting.semi_finish_cut.value);
    CHECK(cutting.semi_finish_cut.value < cutting.rough_cut.value);
    for (const auto* rows : {&cutting.carbide, &cutting.hss})
        for (const ToolFigures& row : *rows) {
            CHECK(row.feed.value < cutting.nose_radius.value);
            CHECK(row.skin_speed.value <= row.cutting_speed.value);
        }
    CHECK(cutting.finish_below.value < cutting.rough_below.value);
    // Common practice, no source: 0.005 in a turn of a facing head, the bit set in 0.001 in, round spans.
    CHECK_THAT(mm(cutting.facing_feed.value), WithinRel(0.005 * 25.4, 1e-12));
    CHECK_THAT(mm(cutting.bit_step.value), WithinRel(0.001 * 25.4, 1e-12));
    CHECK_THAT(mm_min(cutting.axial_feed.value.second), WithinRel(60, 1e-12));
    CHECK_THAT(mm(cutting.bores.value.first), WithinRel(40, 1e-12));
    CHECK_THAT(mm(cutting.bores.value.second), WithinRel(900, 1e-12));
}

TEST_CASE("a later file corrects figure by figure") {
    const Cutting was = read_cutting(table_files(own, "cutting.json"), sources());
    const Cutting is = corrected(R"("cutting": {"finish_cut_mm": [0.2, "own"]}, "carbide": {"mild":
        {"feed_mm": [0.1, "own"]}}, "fillers": {"bronze": ["own/A"]}, "standing": {"trim":
        {"minutes": [12, "own"]}}, "bars": {"small_bar_rpm": [90, 300, "own"]})");
    CHECK_THAT(mm(is.finish_cut.value), WithinRel(0.2, 1e-12));
    const ToolFigures& mild = is.of(CuttingTool::carbide, DepositGroup::mild);
    CHECK_THAT(mm(mild.feed.value), WithinRel(0.1, 1e-12));
    CHECK(mild.feed.source == "own");
    CHECK(mild.cutting_speed.value == was.of(CuttingTool::carbide, DepositGroup::mild).cutting_speed.value);
    CHECK(is.deposits.size() == was.deposits.size() + 1);
    CHECK(is.deposits.back() == std::pair(std::string("own/A"), DepositGroup::bronze));
    CHECK(is.rough_cut.value == was.rough_cut.value);
    CHECK(is.trim.usual.value.value() == 720);
    CHECK(is.trim.range.value == was.trim.range.value);
    CHECK_THAT(rev_min(is.small_bar.value.second), WithinRel(300.0, 1e-12));
}

TEST_CASE("a figure without a source, out of range or outside its own range is refused") {
    CHECK(refused([] { corrected(R"("cutting": {"finish_cut_mm": 0.1})"); }) ==
          "t.json:1:83: cutting.finish_cut_mm: 0.1" + no_source + "\n");
    CHECK(refused([] { corrected(R"("cutting": {"finish_cut_mm": [0, "practice"]})"); }) ==
          "t.json:1:84: cutting.finish_cut_mm: 0" + out_of_range("over 0 and at most 100") + "\n");
    CHECK(refused([] { corrected(R"("standing": {"trim": {"minutes": [1, "practice"]}})"); }) ==
          "t.json:1:87: standing.trim.minutes: lies outside its range; write both as your shop finds them\n");
    CHECK_THAT(refused([] {
                   corrected(R"("carbide": {"mild": {"cutting_speed_m_min": [160, "own"],
        "speed_range_m_min": [30, 100, "own"]}})");
               }),
               Catch::Contains("carbide.mild.cutting_speed_m_min: lies outside its range"));
    CHECK_THAT(refused([] { corrected(R"("fillers": {"mild": [3]})"); }),
               Catch::Contains("is not a name; write a group"));
    CHECK(refused([] { corrected(R"("bars": {"small_bar_rpm": [420, 100, "practice"]})"); }) ==
          "t.json:1:80: bars.small_bar_rpm:" + swapped_ends + "\n");
}

TEST_CASE("a figure that no file gives is missing") {
    const std::string told = refused([] {
        read_cutting(
            {parse("t.json", R"({"format": "ringfill-cutting/1", "description": "d"})", Origin::table)},
            sources());
    });
    CHECK(std::count(told.begin(), told.end(), '\n') == 8 + 8 + 8 + 12 + 6 + 7);
    CHECK(told.starts_with("t.json:1:1: fillers.mild: is missing; write it with its source\n"));
    CHECK(told.find("t.json:1:1: HSS.cast_iron: is missing; write it with its source\n") !=
          std::string::npos);
    CHECK(told.find("t.json:1:1: standing.bar_move: is missing; write it with its source\n") !=
          std::string::npos);
}

TEST_CASE("a step of sizes that is not whole is refused") {
    CHECK(steps_refused(R"("over_mm": [30, "practice"], "to_mm": [18, "practice"], "grades_um": {})") ==
          "t.json:2:55: sizes.a.to_mm: is not over over_mm; swap the two\n");
    CHECK(steps_refused(R"("over_mm": [18, "practice"], "to_mm": [30, "practice"])") ==
          "t.json:2:16: sizes.a.grades_um: is missing; write \"grades_um\": { \"9\": [87, \"ISO286-1\"] }\n");
    CHECK(
        steps_refused(R"("over_mm": [18, "practice"], "to_mm": [30, "practice"], "grades_um": {"9": 52})") ==
        "t.json:2:92: sizes.a.grades_um.9: 52" + no_source + "\n");
}
