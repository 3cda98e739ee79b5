#include <catch2/catch.hpp>

#include <ringfill/take/take_blanket.hpp>

using namespace ringfill;

TEST_CASE("a blanket lies on each bore that is preheated or cools slowly") {
    const auto lines = take_blanket(
        {{"arm root", true, true}, {"pin", false, false}, {"lug", true, false}, {"eye", false, true}});
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].item == "insulating blanket");
    CHECK(lines[0].unit == "pieces");
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
    CHECK(take_blanket({{"pin", false, false}}).empty());
    CHECK(take_blanket({}).empty());
}
