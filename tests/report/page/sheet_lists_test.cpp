#include <catch2/catch.hpp>

#include <string>
#include <vector>

#include <fmt/format.h>

#include "report/odd_jobs.hpp"
#include "report/page/page.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

/// The heads of the rows of the tables with a caption that begins so, in their order.
std::vector<std::string> row_heads(const std::string& page, const std::string& caption) {
    std::vector<std::string> heads;
    each_element(parsed(page), [&](const std::string& element, const auto& node) {
        if (element != "table" || !text_in(node.get_child("caption")).starts_with(caption))
            return;
        for (const auto& [name, row] : node.get_child("tbody"))
            if (name == "tr")
                heads.push_back(text_in(row.get_child("th")));
    });
    return heads;
}

/// Thirty pieces with much stock and shallow cuts.
const std::string many_pieces = R"({ "format": "ringfill-job/1", "title": "Odd", "units": "mm",
  "site": { "ambient": "4 degC" },
  "procedures": { "main": { "filler": "steel/ER70S-6", "gas": "M21", "wire": "1.0 mm", "wire_feed": "6.5 m/min",
                            "current": "150 A", "voltage": "18.5 V", "travel": "320 mm/min" } },
  "boring": { "rough_cut": "0.2 mm" }, "heater": { "kind": "propane", "power": "30 kW", "efficiency": 0.25 },
  "bores": [ { "name": "pin", "count": 30, "base": "steel/A36", "finish_diameter": 90, "length": 100,
               "boss_diameter": 180, "stock": "12 mm", "worn": { "diameter": 93.4 } } ] })";

} // namespace

TEST_CASE("of very many cuts the sheet tells the first and the last, and how many stand between") {
    const Plan plan = ringfill::plan(job_from(many_pieces), shop());
    const std::size_t cuts = plan.bores.front().boring.cuts.size();
    REQUIRE(cuts > 40);
    const auto heads = row_heads(sheet_of(many_pieces), "Cuts");
    REQUIRE(heads.size() == 20 + 1 + 12);
    CHECK(heads.front() == "skim, before the weld");
    CHECK(heads[20] == fmt::format("… {} cuts more, in the result file", cuts - 32));
    CHECK(heads.back() == "spring pass");
}

TEST_CASE("of very many layers the sheet tells the first and the last, and how many stand between") {
    const std::string job = layered_job(300, 100, 500);
    const std::size_t layers = ringfill::plan(job_from(job), shop()).bores.front().layers.size();
    REQUIRE(layers > 48);
    const std::string page = sheet_of(job);
    const std::string left = fmt::format("… {} layers more, in the result file", layers - 40);
    std::vector<std::string> heads;
    each_element(parsed(page), [&](const std::string& element, const auto& node) {
        if (element == "tbody" && text_in(node).find(left) != std::string::npos)
            for (const auto& [name, row] : node)
                if (name == "tr")
                    heads.push_back(text_in(row.get_child("th")));
    });
    REQUIRE(heads.size() == 30 + 1 + 10);
    CHECK_THAT(heads.front(), Contains("layer 1"));
    CHECK(heads[30] == left);
    CHECK_THAT(heads.back(), Contains(fmt::format("layer {}", layers)));
    CHECK_THAT(page, Contains("For the other layers write on: time and temperature before each."));
}

TEST_CASE(
    "of very many pieces the sheet tells the first by the clock, and has forms for four to print again") {
    const std::string page = sheet_of(many_pieces);
    CHECK(row_heads(page, "When each piece is begun and ended").size() == 24);
    CHECK_THAT(page, Contains("<p>6 pieces more; the day view has them all.</p>"));
    CHECK(row_heads(page, "Size as measured").size() == 4 * 4); // after skim, weld, roughing and finish
    CHECK_THAT(page, Contains("<p>For the other pieces print these pages again.</p>"));
    CHECK_THAT(sheet_of(odd_job(R"("finish_diameter": 90, "length": 100, "worn": { "diameter": 93.4 })")),
               !Contains("For the other"));
}

TEST_CASE(
    "of one diameter the sheet tells how far a bore is worn, and no place; of one off its axis it does") {
    const std::string round =
        sheet_of(odd_job(R"("finish_diameter": 90, "length": 100, "worn": { "diameter": 93.4 })"));
    CHECK_THAT(round, Contains(", one diameter measured"));
    CHECK_THAT(round, !Contains("<dt>deepest wear</dt>"));
    const std::string off = sheet_of(odd_job(R"("finish_diameter": 90, "length": 100,
        "worn": { "diameter": 93.4, "offset": 1, "offset_clock": "135 deg" })"));
    CHECK_THAT(off, !Contains("one diameter measured"));
    CHECK_THAT(off, Contains("<dt>deepest wear</dt>"));
}
