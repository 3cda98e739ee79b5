#include <ringfill/boring/standing.hpp>

namespace ringfill {

std::vector<Standing> standing_times(const StandingCounts& counts, const Cutting& cutting) {
    std::vector<Standing> steps;
    const auto add = [&](std::string_view step, int count, const StandingTime& each) {
        if (count > 0)
            steps.push_back({step, count, each});
    };
    add("tool_set", counts.cuts, cutting.tool_set);
    add("bar_move", counts.bar_moves, cutting.bar_move);
    add("trim", counts.trimmed_ends, cutting.trim);
    add("chamfer", counts.chamfers, cutting.chamfer);
    add("groove", counts.grooves, cutting.groove);
    add("hole", counts.holes, cutting.hole);
    add("facing_head", counts.faces, cutting.facing_head);
    return steps;
}

} // namespace ringfill
