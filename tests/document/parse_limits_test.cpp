#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>

#include "document/refused.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

std::string refused(const std::string& text, const DocumentLimits& limits = {}) {
    return refusal(Origin::table, [&] { parse("t.json", text, Origin::table, limits); });
}

/// A text so many times over.
std::string repeated(std::string_view text, std::size_t count) {
    std::string all;
    for (std::size_t i = 0; i < count; ++i)
        all.append(text);
    return all;
}

std::string in_marks(std::size_t letters) {
    return fmt::format("\"{:x>{}}\"", "", letters);
}

std::string object_of(std::size_t members) {
    std::string text;
    for (std::size_t i = 0; i < members; ++i)
        text.append(fmt::format("{}\"k{}\": 0", i ? ",\n" : "", i));
    return fmt::format("{{{}}}", text);
}

} // namespace

TEST_CASE("a file of the largest size is read, one byte more is not") {
    CHECK(refused("[1]  ", {5, 24, 10}) == "accepted");
    CHECK(refused("[1]   ", {5, 24, 10}) ==
          "t.json: is larger than 5 bytes; leave in the table only the rows that differ from ours");
}

TEST_CASE("brackets may be nested 24 deep, not deeper") {
    const auto lists = [](std::size_t depth) { return fmt::format("{:[>{}}{:]>{}}", "", depth, "", depth); };
    CHECK(refused(lists(24)) == "accepted");
    CHECK(refused(lists(25)) == fmt::format("t.json:1:25: {}: brackets are nested deeper than 24; take out "
                                            "the extra brackets\n    {}\n{:28}^",
                                            repeated("[0]", 24), lists(25), ""));
    CHECK(refused(fmt::format("{}1{}", repeated("{\"a\":", 24), repeated("}", 24))) == "accepted");
    CHECK(refused(repeated("[", 100'000)).substr(0, 12) == "t.json:1:25:");
}

TEST_CASE("too many values are refused at the first one too many") {
    CHECK(refused("[1, 2, {}]", {100, 24, 4}) == "accepted");
    CHECK(refused("[1, 2, 3, {}]", {100, 24, 4}) ==
          "t.json:1:11: [3]: the file holds more than 4 values; "
          "leave in the table only the rows that differ from ours\n    [1, 2, 3, {}]\n              ^");
}

TEST_CASE("an object holds 2000 fields and not one more, wherever it stands") {
    CHECK(refused(object_of(2'000)) == "accepted");
    const std::string reason = "an object holds more than 2000 fields; split it\n";
    CHECK(refused(object_of(2'001)).find(reason) != std::string::npos);
    CHECK(refused(fmt::format("[{}, 1]", object_of(2'001))).find(reason) != std::string::npos);
    CHECK(refused(object_of(2'002)).find(reason) != std::string::npos);
}

TEST_CASE("a text of a million bytes is read, a longer one is not") {
    CHECK(refused(in_marks(1'000'000)) == "accepted");
    CHECK(refused(in_marks(1'000'001)).find("a text is too long; shorten it\n") != std::string::npos);
    CHECK(refused(fmt::format("{{{}: 1}}", in_marks(4'096))) == "accepted");
    CHECK(refused(fmt::format("{{{}: 1}}", in_marks(4'097))).find("a text is too long; shorten it\n") !=
          std::string::npos);
}

TEST_CASE("no more faults are told than anyone reads") {
    const std::string text = fmt::format("{{\"a\": 0{}}}", repeated(",\n\"a\": 0", 300));
    try {
        parse("t.json", text, Origin::table);
        FAIL("accepted");
    } catch (const Faulty& faulty) {
        CHECK(faulty.faults().size() == most_faults);
    }
}

TEST_CASE(
    "of nearly two hundred thousand faults on one long line the first are told, and no more are placed") {
    const std::string twice = repeated("\"a\": 1, ", 190'000);
    const std::string told = refused(fmt::format("{{{}\"b\": 1}}", twice));
    CHECK(told.starts_with("t.json:1:10: a: stands here twice, first in line 1; keep one of the two\n"));
    CHECK(std::count(told.begin(), told.end(), '^') == static_cast<std::ptrdiff_t>(most_faults));
    CHECK(
        told.ends_with(fmt::format("only the first {} faults are told; put these right first", most_faults)));
}
