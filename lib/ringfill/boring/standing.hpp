#pragma once

#include <string_view>
#include <vector>

#include <ringfill/table/cutting.hpp>

namespace ringfill {

/// Work of the hands beside the chips, some pieces of one kind.
struct Standing {
    std::string_view step; ///< as the table names it
    int count = 0;
    StandingTime each;

    Time time() const { return static_cast<double>(count) * each.usual.value; }
};

/// How many pieces of each kind a bore has.
struct StandingCounts {
    int cuts = 0; ///< that the bit is set for, in all set-ups
    int trimmed_ends = 0;
    int faces = 0;
    int grooves = 0;
    int holes = 0;
    int chamfers = 0;
    int bar_moves = 0;
};

/// The standing times of a bore; a kind of which there is none is left out.
std::vector<Standing> standing_times(const StandingCounts& counts, const Cutting& cutting);

} // namespace ringfill
