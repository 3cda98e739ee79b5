#include <catch2/catch.hpp>

#include <ringfill/take/needs.hpp>

#include "take/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

BorePlan use_of(const std::string& name, int count, int rough, int finish) {
    BorePlan bore;
    bore.name = name;
    bore.count = count;
    bore.boring.settings.edge_life.source = "practice";
    bore.boring.edges = {rough, finish, in_si<Time>(900), in_si<Time>(300), in_si<Time>(1200)};
    return bore;
}

} // namespace

TEST_CASE("no bores take no edges") {
    CHECK(insert_needs({}).empty());
}

// Worked by hand: 2 × 2 + 1 rough edges, 2 × 1 + 1 finish edges, one spare of each.
TEST_CASE("edges are taken bore by bore, rough and finish, with one spare of each") {
    const auto lines = insert_needs({use_of("arm root", 2, 2, 1), use_of("link", 1, 1, 1)});
    REQUIRE(lines.size() == 2);
    CHECK(item(lines[0]) == "boring edges, rough");
    CHECK(lines[0].need == 5);
    CHECK(lines[0].reserve == 1);
    CHECK(lines[0].supplied == 6);
    CHECK(lines[0].spare == 0);
    CHECK(lines[0].why ==
          "skim, rough and semi-finish cuts: arm root × 2, each 2 (15 min); link 1 (15 min); one edge "
          "lasts 20 min; and one spare");
    CHECK(item(lines[1]) == "boring edges, finish");
    CHECK(lines[1].need == 3);
    CHECK(lines[1].supplied == 4);
    CHECK(lines[1].source == "practice");
}
