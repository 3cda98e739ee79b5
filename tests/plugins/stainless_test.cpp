#include <catch2/catch.hpp>

#include <algorithm>

#include <ringfill/material/answer.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;

namespace {

FamilyAnswer advice_on(std::vector<std::pair<std::string, double>> numbers,
                       const std::string& topic = "advice") {
    const Family& family = family_of(testing::shop().registry, "stainless/304");
    return ask(family.plugin.value(), Question{topic, "304", "stainless/ER308L", std::move(numbers)},
               family.sources);
}

std::string kinds_of(const FamilyAnswer& answer) {
    std::string kinds;
    for (const Advice& advice : answer.advice)
        kinds += advice.kind + " ";
    return kinds;
}

} // namespace

TEST_CASE("austenitic stainless steel is never advised a hold, a blanket or a soak") {
    const FamilyAnswer answer = advice_on({{"structure", 3}});
    CHECK(kinds_of(answer) == "interpass slow_cooling ");
    CHECK(answer.advice[1].text == "Let it cool in the open, without a blanket.");
    CHECK(answer.values.empty());
}

TEST_CASE("martensitic stainless steel is advised a soak and a wait before the crack test") {
    const FamilyAnswer answer = advice_on({{"structure", 2}});
    CHECK(kinds_of(answer) == "soak crack_test ");
    REQUIRE(answer.values.size() == 1);
    CHECK(answer.values[0].name == "crack_test_wait_s");
    CHECK(answer.values[0].number == 48.0 * 3600); // AWS D10.10:2021 5.3: cracks come up to 48 h later
}

TEST_CASE("metal that is no stainless steel, and preheat, are not answered by stainless rules") {
    CHECK(kinds_of(advice_on({{"structure", 1}})).empty());
    CHECK(kinds_of(advice_on({})).empty());
    CHECK(advice_on({{"structure", 3}}, "preheat").methods.empty());
}
