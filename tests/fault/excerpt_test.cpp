#include <catch2/catch.hpp>

#include <string>

#include <ringfill/fault/excerpt.hpp>

using namespace ringfill;

TEST_CASE("the excerpt is the line and a caret") {
    CHECK(excerpt("{\n  \"stok\": 2,\n}", 4) == "      \"stok\": 2,\n      ^");
    CHECK(excerpt("one", 0) == "    one\n    ^");
    CHECK(excerpt("one", 2) == "    one\n      ^");
    CHECK(excerpt("", 0) == "    \n    ^");
}

TEST_CASE("the caret stands below the character whatever bytes came before it") {
    CHECK(excerpt("\"½″ ø\": x", 12) == "    \"½″ ø\": x\n            ^");
}

TEST_CASE("a fault at a line break is shown at the end of its line") {
    CHECK(excerpt("ab\ncd", 2) == "    ab\n      ^");
    CHECK(excerpt("ab\ncd", 3) == "    cd\n    ^");
    CHECK(excerpt("ab\n", 3) == "    \n    ^");
    CHECK(excerpt("ab", 1'000) == "    ab\n      ^");
}

TEST_CASE("a long line is shown around the caret only") {
    const std::string line(200, 'a');
    CHECK(excerpt(line + 'X' + std::string(200, 'b'), 200) ==
          "    …" + std::string(60, 'a') + 'X' + std::string(29, 'b') + "…\n" + std::string(65, ' ') + '^');
}

TEST_CASE("control signs in a line cannot disturb a terminal") {
    CHECK(excerpt("a\x1B[2J\tb\r\nc", 6) == "    a\uFFFD[2J\uFFFDb\uFFFD\n          ^");
}
