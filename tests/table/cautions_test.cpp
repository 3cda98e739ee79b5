#include <catch2/catch.hpp>

#include <algorithm>
#include <set>
#include <sstream>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/job/description.hpp>
#include <ringfill/job/spans.hpp>
#include <ringfill/table/cautions.hpp>
#include <ringfill/units/metric.hpp>

#include "document/refused.hpp"
#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const Bibliography known = {{"practice", {"common practice", "-", "-", "practice", "memory"}}};

const std::string one_rule =
    R"("fire_rules": {"A": {"after_min": [60, "practice"], "clear_m": [10, "practice"]}})";

CautionTable table_of(const std::vector<std::string>& texts) {
    std::vector<Document> files;
    for (const std::string& text : texts)
        files.push_back(
            parse("cautions.json",
                  fmt::format("{{\"format\": \"ringfill-cautions/1\", \"description\": \"d\", {}}}", text),
                  Origin::table));
    return read_cautions(files, known);
}

/// What a table is refused with, a line a fault, without the excerpts; "accepted" when it loads.
std::string refused(const std::string& members) {
    std::istringstream whole(refusal(Origin::table, [&] { table_of({members}); }));
    std::string lines;
    for (std::string line; std::getline(whole, line);)
        if (!line.starts_with("    "))
            lines += line + '\n';
    return lines;
}

/// A table with one caution, whose circumstances and text are given.
std::string with_caution(const std::string& circumstances, const std::string& text = "Mind it.",
                         const std::string& more = R"(, "check": "it")") {
    return fmt::format(
        R"({}, "cautions": {{"c": {{"when": "before", "if": {{{}}}, "text": "{}", "source": "practice"{}}}}})",
        one_rule, circumstances, text, more);
}

std::string refused_if(const std::string& circumstances) {
    return refused(with_caution(circumstances));
}

} // namespace

TEST_CASE("a caution that can never apply is an error, as is one that always does without saying so") {
    CHECK(refused_if("") ==
          "cautions.json:1:181: cautions.c.if: names nothing, so the caution can never apply; name a "
          "circumstance, or \"always\"\n");
    CHECK(refused_if(R"("near_tire": {})")
              .find("cautions.c.if.near_tire: is no circumstance that ringfill knows; did you mean "
                    "\"near_tyre\"?") != std::string::npos);
    CHECK(refused_if(R"("wire_current_A": {"from": [250, "practice"], "under": [160, "practice"]})")
              .find("cautions.c.if.wire_current_A: can never apply; let \"from\" be less than \"under\", "
                    "within 0 "
                    "to 2000") != std::string::npos);
    CHECK(refused_if(R"("wire_current_A": {"from": [60, "practice"], "under": [60, "practice"]})")
              .find("can never apply") != std::string::npos);
    CHECK(refused_if(R"("wire_current_A": {"from": [2001, "practice"]})").find("can never apply") !=
          std::string::npos);
    CHECK(refused_if(R"("ceiling_m": {"under": [0, "practice"]})").find("can never apply") !=
          std::string::npos);
    CHECK(refused_if(R"("ambient_degC": {"under": [-60, "practice"]})").find("can never apply") !=
          std::string::npos);
    CHECK(refused_if(R"("wire_current_A": {})")
              .find("cautions.c.if.wire_current_A: has no limit, so it would always apply; write \"from\" or "
                    "\"under\"") != std::string::npos);
    CHECK(refused_if(R"("wire_current_A": {"from": [0, "practice"]})")
              .find("would always apply; set a limit") != std::string::npos);
    CHECK(refused_if(R"("ceiling_m": {"under": [10.1, "practice"]})").find("would always apply") !=
          std::string::npos);
    CHECK(refused_if(R"("wet": {"from": [1, "practice"]})")
              .find("cautions.c.if.wet: is so or not and has no limits; leave them out") !=
          std::string::npos);
    CHECK(refused_if(R"("always": {}, "wet": {})")
              .find("cautions.c.if.always: makes the others beside it idle; leave one of them") !=
          std::string::npos);
    CHECK(refused_if(R"("wire_current_A": {"from": [250, "nobody"]})").find("is not a known source") !=
          std::string::npos);
    CHECK(refused_if(R"("wet": {})") == "accepted\n");
    CHECK(refused_if(R"("wire_current_A": {"from": [60, "practice"], "under": [160, "practice"]})") ==
          "accepted\n");
}

TEST_CASE("what stands in braces is a measure or a known word") {
    CHECK(refused(with_caution(R"("wet": {})",
                               "Keep {35 ft} and {at most 10 m} off, {clear}, {watch}, {5 degC}.")) ==
          "accepted\n");
    for (const char* text : {"Keep {35} off.", "Keep {far} off.", "Keep {35 ft off.", "Keep 35 ft} off.",
                             "Keep {} off.", "Keep {{35 ft}} off."}) {
        CAPTURE(text);
        CHECK(refused(with_caution(R"("wet": {})", text))
                  .find("in braces, which is no measure or known word; write a measure such as "
                        "{35 ft}") != std::string::npos);
    }
}

TEST_CASE("a caution that a job may leave open says what to look for") {
    CHECK(
        refused(with_caution(R"("wet": {})", "Mind it.", ""))
            .find("cautions.c.check: is missing, yet a job may not say whether the caution applies; write in "
                  "a few words what to look for") != std::string::npos);
    CHECK(refused(with_caution(R"("always": {})", "Mind it.", "")) == "accepted\n");
    CHECK(refused(with_caution(R"("flux": {})", "Mind it.", "")) == "accepted\n");
}

TEST_CASE("a table without a rule of the fire watch is refused, and so is half a rule") {
    CHECK(
        refused(R"("cautions": {})")
            .find("fire_rules: is missing: no rule of the fire watch is known; write one with its source") !=
        std::string::npos);
    CHECK(refused(R"("fire_rules": {"A": {"after_min": [60, "practice"]}})").find("clear_m") !=
          std::string::npos);
    CHECK(refused(R"("fire_rules": {"A": {"after_min": [0, "practice"], "clear_m": [10, "practice"]}})")
              .find("after_min") != std::string::npos);
    CHECK(
        refused(R"("fire_rules": {"longest": {"after_min": [60, "practice"], "clear_m": [10, "practice"]}})")
            .find("fire_rules.longest: is the word for the longest of all; name the document it comes "
                  "from") != std::string::npos);
    CHECK(
        refused(
            R"("fire_rules": {"A": {"after_min": [60, "practice"], "clear_m": [10, "practice"], "checks_for_min": [60, "practice"]}})")
            .find("has one of checks_for_min and checks_every_min; write both or none") != std::string::npos);
}

TEST_CASE("a later table corrects and adds row by row") {
    const CautionTable table = table_of(
        {with_caution(R"("wet": {})"),
         R"("cautions": {"c": {"when": "after", "if": {"dust": {}}, "check": "dust", "text": "Sweep.", "source": "practice"},
                         "d": {"when": "after", "if": {"always": {}}, "text": "Go home.", "source": "practice"}})"});
    REQUIRE(table.rows.size() == 2);
    CHECK(table.rows[0].text == "Sweep.");
    CHECK(table.rows[0].triggers.at(0).circumstance == circumstance("dust"));
    CHECK(table.rows[1].name == "d");
    CHECK(table.fire_rules.size() == 1);
}

TEST_CASE(
    "a later table cannot take away what is for every job, nor shorten a rule under its document's name") {
    const std::string later =
        R"("cautions": {"c": {"when": "before", "if": {"wet": {}}, "check": "it", "text": "t", "source": "practice"}})";
    CHECK(
        refusal(Origin::table,
                [&] {
                    table_of({with_caution(R"("always": {})"), later});
                })
            .find(
                "cautions.c.if: takes a caution away that is for every job; leave it \"always\", or write a "
                "caution of your own name") != std::string::npos);
    const auto rule = [](const std::string& figures) { return R"("fire_rules": {"A": {)" + figures + "}}"; };
    const std::string whole =
        R"("after_min": [60, "practice"], "clear_m": [10, "practice"], "checks_for_min": [60, "practice"], "checks_every_min": [20, "practice"])";
    for (
        const char* less :
        {R"("after_min": [59, "practice"], "clear_m": [10, "practice"], "checks_for_min": [60, "practice"], "checks_every_min": [20, "practice"])",
         R"("after_min": [60, "practice"], "clear_m": [9, "practice"], "checks_for_min": [60, "practice"], "checks_every_min": [20, "practice"])",
         R"("after_min": [60, "practice"], "clear_m": [10, "practice"], "checks_for_min": [50, "practice"], "checks_every_min": [20, "practice"])",
         R"("after_min": [60, "practice"], "clear_m": [10, "practice"], "checks_for_min": [60, "practice"], "checks_every_min": [30, "practice"])",
         R"("after_min": [60, "practice"], "clear_m": [10, "practice"])"}) {
        CAPTURE(less);
        CHECK(refusal(Origin::table,
                      [&] {
                          table_of({rule(whole), rule(less)});
                      })
                  .find("fire_rules.A: asks for less than the document of that name; give your rule a name "
                        "of its "
                        "own") != std::string::npos);
    }
    CHECK(table_of({rule(whole), rule(whole)}).fire_rules.size() == 1);
}
