#include <catch2/catch.hpp>

#include <string>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/table/packs.hpp>
#include <ringfill/table/shelf.hpp>

#include "document/refused.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

std::string practice(const std::string& title) {
    return fmt::format(
        R"("practice": {{"title": "{}", "edition": "-", "place": "-", "kind": "practice", "seen": "memory"}})",
        title);
}

Document bibliography(const std::string& members) {
    return parse(
        "s.json",
        fmt::format(R"({{"format": "ringfill-sources/1", "description": "d", "sources": {{{}}}}})", members),
        Origin::table);
}

} // namespace

TEST_CASE("a bibliography is read file after file") {
    const auto first = bibliography(practice("common practice"));
    const auto second = bibliography(fmt::format(
        R"({}, "A": {{"title": "t", "edition": "e", "place": "p", "kind": "standard", "seen": "read"}})",
        practice("common practice")));
    const Bibliography found = read_sources({first, second});
    REQUIRE(found.size() == 2);
    CHECK(found.at("A").title == "t");
    CHECK(found.at("A").edition == "e");
    CHECK(found.at("A").place == "p");
    CHECK(found.at("A").kind == "standard");
    CHECK(found.at("A").seen == "read");
}

TEST_CASE("a key keeps its meaning") {
    const std::string whole = refusal(Origin::table, [&] {
        read_sources({bibliography(practice("common practice")), bibliography("\n" + practice("another"))});
    });
    CHECK(whole.substr(0, whole.find('\n')) ==
          "s.json:2:13: sources.practice: is already the key of another source; choose another key");
}

TEST_CASE("a source says how it is known") {
    CHECK(
        refusal(Origin::table,
                [&] {
                    read_sources({bibliography("\n\"A\": {\"title\": \"t\", \"edition\": \"e\",\n\"place\": "
                                               "\"p\",\n\"kind\": \"book\",\n"
                                               "\"seen\": \"heard\"}")});
                }) ==
        "s.json:4:9: sources.A.kind: \"book\" is not a word used here; known here: standard, textbook, "
        "paper, "
        "regulation, handbook, practice, own\n    \"kind\": \"book\",\n            ^\n"
        "s.json:5:9: sources.A.seen: \"heard\" is not a word used here; known here: read, restated, memory\n"
        "    \"seen\": \"heard\"}}}\n            ^");
}

TEST_CASE("a table may bring sources of its own") {
    const std::string table = R"({"format": "ringfill-packs/1", "description": "d",
        "sources": {"mine": {"title": "t", "edition": "e", "place": "p", "kind": "paper", "seen": "read"}},
        "wire": {"a": {"units": "mm", "content_kg": [15, "mine"]}}})";
    const Packs packs = read_packs({parse("t.json", table, Origin::table)}, {});
    REQUIRE(packs.wire.size() == 1);
    CHECK(packs.wire[0].content.source == "mine");
}
