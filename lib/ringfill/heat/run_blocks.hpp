#pragma once

#include <cstddef>
#include <functional>

namespace ringfill {

/// Runs the blocks of a long piece of work: `block` with each number from 0 to under `count` once, in any
/// sequence, in any threads, several at once if it likes, and returns when all have ended. `block` does not
/// throw; the answer does not depend on the sequence. Empty: one block after the other in the calling thread.
using RunBlocks = std::function<void(std::size_t count, const std::function<void(std::size_t index)>& block)>;

} // namespace ringfill
