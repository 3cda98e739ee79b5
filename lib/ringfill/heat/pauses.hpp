#pragma once

#include <string_view>
#include <vector>

#include <ringfill/heat/ring_times.hpp>
#include <ringfill/table/standing_times.hpp>
#include <ringfill/weld/settings.hpp>

namespace ringfill {

/// What a process asks for beside the arc: changing, chipping and cleaning.
struct Handling {
    std::string_view process;  ///< one of process_words
    std::string_view standing; ///< its name in the table of standing times: minutes for each minute of arc
    bool after_each_ring =
        false; ///< slag is chipped before the next ring; else the layer is cleaned as a whole
};
const Handling& handling_of(std::string_view process);

/// The least pauses between the rings of a bore and between its layers: the arc is off and the boss cools.
struct LeastPauses {
    Time step_over;
    Time cleaning;
};

/// From the standing times, and from the handling of the process by the longest ring or layer of the bore.
/// The job's own step_over holds whole.
LeastPauses pauses_of(const Settings& settings, const std::vector<RingPass>& passes,
                      const std::vector<StepTime>& times);

} // namespace ringfill
