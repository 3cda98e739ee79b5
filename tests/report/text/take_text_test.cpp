#include <algorithm>
#include <regex>
#include <sstream>

#include <catch2/catch.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/take_text.hpp>
#include <ringfill/report/text/view.hpp>
#include <ringfill/say/cautions.hpp>

#include "report/plan_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

const Style plain;

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

/// The lines of one block, from its heading to the next blank line.
std::vector<std::string> block(const std::string& text, const std::string& heading) {
    const auto lines = lines_of(text);
    const auto begin = std::find(lines.begin(), lines.end(), heading);
    return {begin, std::find(begin, lines.end(), "")};
}

} // namespace

TEST_CASE("the blocks stand in the order in which they are needed") {
    const std::string text = take_text(plan_of(small_job()), plain);
    std::size_t last = 0;
    for (const char* heading :
         {"Stick pins, drainage ship 2\n", "\nTAKE\n", "\nBORES\n", "\nCAUTIONS BEFORE THE WORK\n",
          "\nWHY SO MUCH\n", "\nNOTES\n", "\nASSUMED (not in the job file)\n"}) {
        CAPTURE(heading);
        const std::size_t place = text.find(heading);
        REQUIRE(place != std::string::npos);
        CHECK((place > last || last == 0));
        last = place;
    }
    CHECK(text.ends_with("\n"));
    CHECK_FALSE(text.ends_with("\n\n"));
}

TEST_CASE("the second line sums up bores, wire and arc") {
    CHECK(std::regex_match(lines_of(take_text(plan_of(small_job()), plain))[1],
                           std::regex("1 bore · [0-9.]+ kg of wire · [0-9]+ min of arc")));
    CHECK(std::regex_match(lines_of(take_text(plan_of(small_job("\"count\": 12,")), plain))[1],
                           std::regex("12 bores · [0-9.]+ kg of wire · [0-9]+ h [0-9]{2} min of arc")));
}

TEST_CASE("each need has its line with what to load, and its reason") {
    const Plan plan = plan_of(small_job());
    const std::string text = take_text(plan, plain);
    const auto take = block(text, "TAKE");
    REQUIRE(take.size() == 2 + plan.take.size());
    CHECK(std::regex_match(take[1], std::regex(" +need +on top  load")));
    const std::string why = text.substr(text.find("WHY SO MUCH"));
    for (std::size_t i = 0; i < plan.take.size(); ++i) {
        const std::string item = item_text(plan.take[i], plan.units);
        CAPTURE(item);
        CHECK(take[2 + i].starts_with("  " + item + "  "));
        CHECK_THAT(why, Contains("- " + item + ":"));
    }
    CHECK(take[2].ends_with("  1 × 5 kg spool"));
}

TEST_CASE("each bore has its name, its count and its figures in one line") {
    const auto bores = block(take_text(plan_of(small_job("\"count\": 3,")), plain), "BORES");
    REQUIRE(bores.size() == 3);
    CHECK(bores[1] == "                skim to  weld to  layers × rings  wire each  arc each");
    CHECK(std::regex_match(
        bores[2], std::regex("  pin left × 3  94\\.4 mm  [0-9.]+ mm +2 × 22 +[0-9.]+ kg +[0-9]+ min")));
    const auto unskimmed = block(take_text(plan_of(small_job("\"skim\": \"none\",")), plain), "BORES");
    CHECK_THAT(unskimmed[2], Contains(" none  "));
}

TEST_CASE("a name too long to stand before its figures stands above them, whole") {
    Plan plan = plan_of(small_job());
    plan.bores.front().name = std::string(70, 'n');
    const auto bores = block(take_text(plan, plain), "BORES");
    REQUIRE(bores.size() == 4);
    CHECK(bores[1] == "    skim to  weld to  layers × rings  wire each  arc each");
    CHECK(bores[2] == "  " + std::string(70, 'n'));
    CHECK(
        std::regex_match(bores[3], std::regex("    94\\.4 mm  [0-9.]+ mm +2 × 22 +[0-9.]+ kg +[0-9]+ min")));
}

TEST_CASE("every caution, note and assumed value of the plan is told") {
    const Plan plan =
        plan_of(small_job("\"boss_diameter\": \"105 mm\", \"holes\": [{ \"diameter\": \"10 mm\", "
                          "\"depth\": \"50 mm\", \"clock\": \"90 deg\" }],"));
    const std::string text = std::regex_replace(take_text(plan, plain), std::regex("\n  +"), " ");
    CHECK(plan.cautions.size() >= 3); // one diameter, a thin wall, fire
    for (const Caution& caution : plan.cautions)
        if (caution.applies == Applies::yes)
            CHECK_THAT(text, Contains("! " + names_of(caution.about) + ": " + caution.text + " (" +
                                      caution.because + ")\n"));
    for (const std::string& open : not_stated(plan.cautions))
        CHECK_THAT(text, Contains("? " + open + "\n"));
    for (const std::string& note : plan.notes)
        CHECK_THAT(text, Contains("- " + note + "\n"));
    for (const Assumed& assumed : plan.assumed)
        CHECK_THAT(text,
                   Contains("- " + assumed.path + ": " + assumed.value + " [" + assumed.source + "]\n"));
}

TEST_CASE("a job that leaves nothing to assume has no such block") {
    Plan plan = plan_of(small_job());
    plan.assumed.clear();
    CHECK_THAT(take_text(plan, plain), !Contains("ASSUMED"));
}

TEST_CASE("bold marks the headings and the wire, and adds no word") {
    const Plan plan = plan_of(small_job());
    const std::string bold = take_text(plan, Style{true});
    for (const char* heading : {"TAKE", "BORES", "CAUTIONS BEFORE THE WORK", "WHY SO MUCH", "NOTES",
                                "ASSUMED (not in the job file)"})
        CHECK_THAT(bold, Contains("\x1b[1m" + std::string(heading) + "\x1b[0m"));
    CHECK_THAT(bold, Contains("\x1b[1m  wire steel/ER70S-6 1.0 mm"));
    CHECK(std::regex_replace(bold, std::regex("\x1b\\[[01]m"), "") == take_text(plan, plain));
}

TEST_CASE("packs that would run over the edge stand below their line, broken at blanks") {
    Plan plan = plan_of(small_job());
    plan.take.front().cover = {{"a spool with a very long name", 12},
                               {"another spool with a long name", 1},
                               {"a third spool of some other size", 2}};
    const auto take = block(take_text(plan, plain), "TAKE");
    CHECK(take[3] == "    load 12 × a spool with a very long name + 1 × another spool with a long");
    CHECK(take[4] == "         name + 2 × a third spool of some other si…");
    plan.take.front().cover.clear();
    CHECK(block(take_text(plan, plain), "TAKE")[2].ends_with("  no pack known"));
}
