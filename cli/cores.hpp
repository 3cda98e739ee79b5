#pragma once

#include <ringfill/heat/run_blocks.hpp>

namespace ringfill::cli {

/// How many cores this process may use, at least 1.
unsigned usable_cores();

/// Runs blocks on so many threads at most, the calling one among them, and on none but that for a single
/// block; each takes the next block that nobody has begun. Where the system gives fewer threads, those do it.
RunBlocks on_threads(unsigned threads);

} // namespace ringfill::cli
