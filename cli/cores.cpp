#include "cores.hpp"

#include <algorithm>
#include <atomic>
#include <system_error>
#include <thread>
#include <vector>

#include <sched.h>

namespace ringfill::cli {

unsigned usable_cores() {
    cpu_set_t cores;
    CPU_ZERO(&cores);
    if (::sched_getaffinity(0, sizeof cores, &cores) == 0)
        return static_cast<unsigned>(std::max(1, CPU_COUNT(&cores)));
    return std::max(1U, std::thread::hardware_concurrency());
}

RunBlocks on_threads(unsigned threads) {
    return [threads](std::size_t count, const std::function<void(std::size_t)>& block) {
        std::atomic<std::size_t> next = 0;
        const auto work = [&] {
            for (std::size_t index = next++; index < count; index = next++)
                block(index);
        };
        std::vector<std::jthread> others;
        try {
            for (std::size_t i = 1; i < std::min<std::size_t>(threads, count); ++i)
                others.emplace_back(work);
        } catch (const std::system_error&) {
            // the system gives no more threads: those there are do it
        }
        work();
    };
}

} // namespace ringfill::cli
