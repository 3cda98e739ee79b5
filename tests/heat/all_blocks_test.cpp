#include <catch2/catch.hpp>

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

#include <ringfill/heat/all_blocks.hpp>

#include "heat/threads_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// What a user of the library may hand over, right and wrong.
std::vector<RunBlocks> runners() {
    const auto backwards = [](std::size_t count, const std::function<void(std::size_t)>& block) {
        while (count > 0)
            block(--count);
    };
    const auto leaves_out = [](std::size_t count, const std::function<void(std::size_t)>& block) {
        for (std::size_t index = 1; index < count; index += 2)
            block(index);
    };
    const auto does_too_much = [](std::size_t count, const std::function<void(std::size_t)>& block) {
        for (std::size_t index = 0; index < 2 * count; ++index) {
            block(index);
            block(index);
        }
    };
    return {{}, on_threads(1), on_threads(2), on_threads(8), backwards, leaves_out, does_too_much};
}

} // namespace

TEST_CASE("every block is run once, however they are run") {
    for (const RunBlocks& run_blocks : runners())
        for (const std::size_t count : {std::size_t{0}, std::size_t{1}, std::size_t{2}, std::size_t{50}}) {
            std::vector<int> times(count);
            run_all(count, run_blocks, [&](std::size_t index) { ++times[index]; });
            CHECK(std::count(times.begin(), times.end(), 1) == static_cast<std::ptrdiff_t>(count));
        }
}

TEST_CASE("of the blocks that throw the first by number is heard, after all have ended") {
    for (const RunBlocks& run_blocks : runners()) {
        std::vector<int> times(20);
        const auto block = [&](std::size_t index) {
            ++times[index];
            if (index == 7 || index == 8 || index == 19)
                throw std::runtime_error("block " + std::to_string(index));
        };
        CHECK_THROWS_WITH(run_all(times.size(), run_blocks, block), "block 7");
        CHECK(std::count(times.begin(), times.end(), 1) == 20);
    }
}

TEST_CASE("a single block asks nobody to run it") {
    bool is_asked = false;
    const auto ask = [&](std::size_t, const std::function<void(std::size_t)>&) { is_asked = true; };
    int times = 0;
    run_all(1, ask, [&](std::size_t) { ++times; });
    CHECK(times == 1);
    CHECK_FALSE(is_asked);
}
