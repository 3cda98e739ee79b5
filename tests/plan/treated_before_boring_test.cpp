// When metal that must be heat-treated is bored, by the plan and from the product's own tables.

#include <catch2/catch.hpp>

#include "plan/pair_of_metals.hpp"

using namespace ringfill;
using namespace ringfill::testing;

// 9 % Cr steel was roughed in the afternoon that it was welded.
TEST_CASE("what is not fit for service as welded is bored after its heat treatment") {
    const auto begins = [](const Plan& made, Step step) -> std::optional<Time> {
        for (const DayEntry& entry : made.day.value().day.entries)
            if (entry.step == step)
                return entry.from;
        return std::nullopt;
    };
    CHECK_FALSE(begins(pair("steel/S355J2", "steel/ER70S-6", metal_cored), steps::heat_treat));
    const Plan made = pair("steel/X10CrMoVNb9-1", "steel/ER90S-B3", metal_cored);
    const auto treated = begins(made, steps::heat_treat);
    const auto rough = begins(made, steps::rough);
    REQUIRE(treated);
    REQUIRE(rough);
    CHECK(*treated > begins(made, steps::weld).value());
    // 12 h to get it there, up to heat and down again, and the hold of 1 h for 25 mm [ASME B31.3]
    CHECK((*rough - *treated).value() / 3600 > 12 + 1);
}
