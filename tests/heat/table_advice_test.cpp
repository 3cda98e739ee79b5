#include <catch2/catch.hpp>

#include "heat/heat_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("the advice of a grade is told in its own sequence, before that of the filler") {
    HeatSample sample({{"formula", 150}});
    sample.grade().advice = {{"technique", "First.", "practice"},
                             {"interpass", "Second.", "practice"},
                             {"technique", "Third.", "practice"}};
    sample.family.fillers[0].advice = {{"technique", "Of the filler.", "practice"}};
    std::vector<std::string> told;
    for (const auto& advice : sample.preheat().advice)
        if (advice.kind != "slow_cooling") // how it cools stands between the two
            told.push_back(advice.text);
    CHECK(told == std::vector<std::string>{"First.", "Second.", "Third.", "Of the filler."});
}
