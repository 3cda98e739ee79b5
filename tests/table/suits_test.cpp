#include <catch2/catch.hpp>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/table/suits.hpp>

#include "document/refused.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const Bibliography known = {{"practice", {"common practice", "-", "-", "practice", "memory"}}};

std::string file_of(const std::string& rules) {
    return fmt::format("{{\"format\": \"ringfill-suits/1\", \"description\": \"d\", \"suits\": {{\n{}}}}}",
                       rules);
}

std::string rule(const std::string& name, const std::string& filler, const std::string& base,
                 const std::string& verdict) {
    return fmt::format(
        R"("{}": {{ "fillers": ["{}"], "bases": ["{}"], "verdict": {}, "why": "w", "source": "practice" }})",
        name, filler, base, verdict);
}

std::vector<Suit> suits_of(const std::vector<std::string>& files) {
    std::vector<Document> documents;
    for (const std::string& rules : files)
        documents.push_back(parse("suits.json", file_of(rules), Origin::table));
    return read_suits(documents, known);
}

/// The name of the rule for a filler on a metal; empty without one.
std::string found_in(const std::string& rules, const SuitName& filler, const SuitName& base) {
    const std::vector<Suit> read = suits_of({rules});
    const Suit* found = find_suit(SuitRules(read.begin(), read.end()), filler, base);
    return found ? found->name : "";
}

std::string first_line(const std::string& rules) {
    const std::string whole = refusal(Origin::table, [&] { suits_of({rules}); });
    return whole.substr(0, whole.find('\n'));
}

const SuitName wire{"steel/W", "steel_filler"};
const SuitName metal{"steel/M", "soft"};

} // namespace

TEST_CASE("a rule that names more closely goes first") {
    const std::string groups = rule("groups", "steel_filler", "soft", "\"not_advised\"");
    const std::string one = rule("one", "steel/W", "soft", "\"recommended\"");
    const std::string both =
        rule("both", "steel/W", "steel/M", R"("with_buffer", "buffer": ["nickel_filler"])");
    CHECK(found_in(groups, wire, metal) == "groups");
    CHECK(found_in(groups + "," + one, wire, metal) == "one");
    CHECK(found_in(both + "," + groups + "," + one, wire, metal) == "both");
    CHECK(found_in(one, {"steel/V", "steel_filler"}, metal).empty());
    CHECK(found_in(groups, {"steel/W", ""}, metal).empty());
}

TEST_CASE("of equally close rules the most careful one rules, wherever it stands") {
    const std::string easy = rule("easy", "steel_filler", "soft", "\"recommended\"");
    const std::string middle = rule("middle", "steel_filler", "soft", R"("with_buffer", "buffer": ["a"])");
    const std::string hard = rule("hard", "steel_filler", "soft", "\"not_advised\"");
    CHECK(found_in(easy + "," + middle, wire, metal) == "middle");
    CHECK(found_in(hard + "," + middle + "," + easy, wire, metal) == "hard");
}

TEST_CASE("a later file corrects a rule by its name") {
    const auto suits = suits_of({rule("a", "steel_filler", "soft", "\"recommended\""),
                                 rule("a", "steel_filler", "soft", "\"not_advised\"")});
    REQUIRE(suits.size() == 1);
    CHECK(suits[0].verdict == Verdict::not_advised);
}

TEST_CASE("a rule that contradicts itself is refused") {
    CHECK(
        first_line(rule("a", "f", "b", "\"with_buffer\"")) ==
        R"(suits.json:2:6: suits.a.buffer: is missing; name the fillers of the buffer, such as ["stainless/ER309L"])");
    CHECK(
        first_line(rule("a", "f", "b", R"("recommended", "buffer": ["x"])")) ==
        R"(suits.json:2:78: suits.a.buffer: stands beside a verdict without one; write the verdict "with_buffer" or take it out)");
    CHECK(
        first_line(rule("a", "", "b", "\"recommended\"")) ==
        R"(suits.json:2:20: suits.a.fillers[0]: "" is not a name; write a group, or a name such as "steel/C45")");
    CHECK(
        first_line(rule("a", "f", "b", "\"perhaps\"")) ==
        R"(suits.json:2:53: suits.a.verdict: "perhaps" is not a word used here; known here: recommended, with_buffer, not_advised)");
}
