#include <catch2/catch.hpp>

#include <ringfill/take/needs.hpp>

#include "take/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("a blanket lies on each bore that is preheated or cools slowly") {
    const auto lines = blanket_needs(
        {{"arm root", true, true}, {"pin", false, false}, {"lug", true, false}, {"eye", false, true}});
    REQUIRE(lines.size() == 1);
    CHECK(item(lines[0]) == "insulating blanket");
    CHECK(unit(lines[0]) == "pieces");
    CHECK(lines[0].need == 3);
    CHECK(lines[0].reserve == 0);
    CHECK(lines[0].supplied == 3);
    CHECK(lines[0].spare == 0);
    CHECK(lines[0].source == "practice");
    CHECK(lines[0].why ==
          "keeps the heat in and evens it out, one for each bore of arm root (preheated, cools "
          "slowly), lug (preheated), eye (cools slowly)");
    REQUIRE(lines[0].working.size() == 4);
    CHECK(lines[0].working[0].inputs[0].values() == std::vector<double>{1, 1, 1});
}

TEST_CASE("cold bores take no blanket") {
    CHECK(blanket_needs({{"pin", false, false}}).empty());
    CHECK(blanket_needs({}).empty());
}
