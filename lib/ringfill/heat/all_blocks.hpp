#pragma once

#include <ringfill/heat/run_blocks.hpp>

namespace ringfill {

/// Runs every block once: as `run_blocks` does it, then those it left out in the calling thread; where it is
/// empty, all of them so. Afterwards throws what the block of the lowest number threw, if any did.
void run_all(std::size_t count, const RunBlocks& run_blocks, const std::function<void(std::size_t)>& block);

} // namespace ringfill
