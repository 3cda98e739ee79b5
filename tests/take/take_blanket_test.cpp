#include <catch2/catch.hpp>

#include <ringfill/take/needs.hpp>

#include "take/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

BorePlan bore_of(const std::string& name, bool preheated, bool cools_slowly) {
    BorePlan bore;
    bore.name = name;
    if (preheated)
        bore.heat.preheat.minimum = AskedTemperature{in_si<Temperature>(400), "a table", "practice"};
    if (cools_slowly)
        bore.heat.preheat.values.emplace_back().name = "cooling_max_K_per_h";
    return bore;
}

} // namespace

TEST_CASE("a blanket lies on each bore that is preheated or cools slowly") {
    const auto lines = blanket_needs({bore_of("arm root", true, true), bore_of("pin", false, false),
                                      bore_of("lug", true, false), bore_of("eye", false, true)});
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
    CHECK(blanket_needs({bore_of("pin", false, false)}).empty());
    CHECK(blanket_needs({}).empty());
}

TEST_CASE("metal that a blanket would harm takes none") {
    BorePlan open = bore_of("lug", true, false);
    open.heat.cools_in_the_open = true;
    BorePlan cold = bore_of("eye", false, true);
    cold.heat.cold_iron = true;
    CHECK(blanket_needs({open, cold}).empty());
}
