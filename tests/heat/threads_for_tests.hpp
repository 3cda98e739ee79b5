#pragma once

#include <cstddef>
#include <thread>
#include <vector>

#include <ringfill/heat/run_blocks.hpp>

namespace ringfill::testing {

/// Runs blocks in so many threads, dealt out in turns.
inline RunBlocks on_threads(std::size_t threads) {
    return [threads](std::size_t count, const std::function<void(std::size_t)>& block) {
        std::vector<std::jthread> all;
        for (std::size_t first = 0; first < threads; ++first)
            all.emplace_back([&block, count, threads, first] {
                for (std::size_t index = first; index < count; index += threads)
                    block(index);
            });
    };
}

} // namespace ringfill::testing
