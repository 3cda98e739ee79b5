#include <ringfill/heat/all_blocks.hpp>

#include <atomic>
#include <exception>
#include <vector>

namespace ringfill {

void run_all(std::size_t count, const RunBlocks& run_blocks, const std::function<void(std::size_t)>& block) {
    std::vector<std::atomic<bool>> taken(count);
    std::vector<std::exception_ptr> thrown(count);
    const auto run_once = [&](std::size_t index) {
        if (index >= count || taken[index].exchange(true))
            return;
        try {
            block(index);
        } catch (...) {
            thrown[index] = std::current_exception();
        }
    };
    if (run_blocks && count > 1)
        run_blocks(count, run_once);
    for (std::size_t index = 0; index < count; ++index)
        run_once(index);
    for (const std::exception_ptr& one : thrown)
        if (one)
            std::rethrow_exception(one);
}

} // namespace ringfill
