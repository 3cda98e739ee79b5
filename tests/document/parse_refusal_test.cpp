#include <catch2/catch.hpp>

#include <string>

#include <ringfill/document/parse.hpp>

#include "document/refused.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

std::string refused(const std::string& text, const DocumentLimits& limits = {}) {
    return refusal(Origin::job, [&] { parse("job.json", text, Origin::job, limits); });
}

const std::string no_json =
    "this is not JSON here; look for a missing comma, quote or bracket just before it\n";
const std::string too_early = "the file ends too early; close every bracket and quote\n";

} // namespace

TEST_CASE("a doubled key is refused at its second place and names the first") {
    CHECK(refused("{\n  \"ø\": 1, \"stock\": 1,\n\n  \"stock\": 2\n}") ==
          "job.json:4:3: stock: stands here twice, first in line 2; keep one of the two\n      \"stock\": "
          "2\n      ^");
    CHECK(refused(R"([{"a": {"b": 1, "b": {"b": 1}}}])") ==
          "job.json:1:17: [0].a.b: stands here twice, first in line 1; keep one of the two\n"
          "    [{\"a\": {\"b\": 1, \"b\": {\"b\": 1}}}]\n                    ^");
    CHECK(refused("{\"a\": 1, \"\\u0061\": 2}") ==
          "job.json:1:10: a: stands here twice, first in line 1; keep one of the two\n"
          "    {\"a\": 1, \"\\u0061\": 2}\n             ^");
}

TEST_CASE("all doubled keys and numbers too large are told in one go") {
    CHECK(refused("{\"a\": 1e999,\n\"a\": [-1e999]}") ==
          "job.json:1:7: a: 1e999 is too large to be a number here; write the value you measured\n"
          "    {\"a\": 1e999,\n          ^\n"
          "job.json:2:1: a: stands here twice, first in line 1; keep one of the two\n"
          "    \"a\": [-1e999]}\n    ^\n"
          "job.json:2:7: a[0]: -1e999 is too large to be a number here; write the value you measured\n"
          "    \"a\": [-1e999]}\n          ^");
    CHECK(refused("1e999") == "job.json:1:1: 1e999 is too large to be a number here; write the value you "
                              "measured\n    1e999\n    ^");
}

TEST_CASE("a byte-order mark is named") {
    CHECK(refused("\xEF\xBB\xBF{}") == "job.json:1:1: the file starts with a byte-order mark; save it as "
                                       "UTF-8 without one\n    \uFFFD{}\n    ^");
}

TEST_CASE("a file that ends too early says so at its end") {
    CHECK(refused("") == "job.json:1:1: " + too_early + "    \n    ^");
    CHECK(refused(" \n") == "job.json:2:1: " + too_early + "    \n    ^");
    CHECK(refused("// only a comment") ==
          "job.json:1:18: " + too_early + "    // only a comment\n" + std::string(21, ' ') + "^");
    CHECK(refused("{\"a\": {") == "job.json:1:8: a: " + too_early + "    {\"a\": {\n           ^");
    CHECK(refused("{\"a\": [1, ") ==
          "job.json:1:11: a[1]: " + too_early + "    {\"a\": [1, \n              ^");
    CHECK(refused("{\"a\": \"x") == "job.json:1:9: a: " + too_early + "    {\"a\": \"x\n            ^");
    CHECK(refused("{\"a\": tru") == "job.json:1:10: a: " + too_early + "    {\"a\": tru\n             ^");
    CHECK(refused("{} /* open") == "job.json:1:11: " + too_early + "    {} /* open\n              ^");
    CHECK(refused("-") == "job.json:1:2: " + too_early + "    -\n     ^");
}

TEST_CASE("broken JSON is refused at the place with its path") {
    CHECK(refused("{\"a\": 1 \"b\": 2}") ==
          "job.json:1:9: " + no_json + "    {\"a\": 1 \"b\": 2}\n            ^");
    CHECK(refused("{\"a\": {\"b\": [1 2]}}") ==
          "job.json:1:16: a.b[1]: " + no_json + "    {\"a\": {\"b\": [1 2]}}\n                   ^");
    CHECK(refused("{\"a\": {x}}") == "job.json:1:8: a: " + no_json + "    {\"a\": {x}}\n           ^");
    CHECK(refused("{'a': 1}") ==
          "job.json:1:2: a single quote stands here; put texts in double quotes: \"\n    {'a': 1}\n     ^");
    CHECK(refused("[,]") == "job.json:1:2: [0]: " + no_json + "    [,]\n     ^");
    CHECK(refused("[1,,]") == "job.json:1:4: [1]: " + no_json + "    [1,,]\n       ^");
    CHECK(refused("[01]") == "job.json:1:3: [1]: " + no_json + "    [01]\n      ^");
    CHECK(refused("[NaN]") == "job.json:1:2: [0]: " + no_json + "    [NaN]\n     ^");
    CHECK(refused("# no") ==
          "job.json:1:1: a comment does not begin with #; write // before it\n    # no\n    ^");
    CHECK(refused("[1/2]") == "job.json:1:3: [1]: " + no_json + "    [1/2]\n      ^");
}

TEST_CASE("what a typist meant by a sign that does not fit is said") {
    for (const std::string curly : {"\u201C", "\u201D", "\u2018", "\u2019"})
        CHECK(refused("{" + curly + "a\": 1}") ==
              "job.json:1:2: a curly quote stands here; type a straight one: \"\n    {" + curly +
                  "a\": 1}\n     ^");
    CHECK(refused("[.5]") ==
          "job.json:1:2: [0]: a number does not begin with a point; write a 0 before it\n    [.5]\n     ^");
    CHECK(refused("[\"a\tb\"]") ==
          "job.json:1:4: [0]: a tab stands inside a text; write a blank\n    [\"a\uFFFDb\"]\n       ^");
}

TEST_CASE("what is no text of UTF-8 is refused at its byte") {
    CHECK(refused("[\"a\xFF\"]") == "job.json:1:4: [0]: " + no_json + "    [\"a\uFFFD\"]\n       ^");
    CHECK(refused("[\"\xED\xA0\x80\"]") ==
          "job.json:1:3: [0]: " + no_json + "    [\"\uFFFD\uFFFD\uFFFD\"]\n      ^");
    CHECK(refused(std::string("[\0]", 3)) == "job.json:1:2: [0]: " + no_json + "    [\uFFFD]\n     ^");
    CHECK(refused(std::string("[\"a\0\"]", 6)) ==
          "job.json:1:4: [0]: " + no_json + "    [\"a\uFFFD\"]\n       ^");
}

TEST_CASE("something after the end is refused") {
    CHECK(refused("{} x") ==
          "job.json:1:4: something stands after the end of the job; take it out\n    {} x\n       ^");
    CHECK(refused("{}{}") ==
          "job.json:1:3: something stands after the end of the job; take it out\n    {}{}\n      ^");
    CHECK(refused("1 2") ==
          "job.json:1:3: something stands after the end of the job; take it out\n    1 2\n      ^");
}

TEST_CASE("a text that runs past its line is told to be closed") {
    CHECK(refused("[\"a\nb\"]") ==
          "job.json:1:4: [0]: a text does not end on its line; close it with a quote\n    [\"a\n       ^");
}
