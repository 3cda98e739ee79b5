#include <ringfill/heat/arc_duty.hpp>

#include <algorithm>

namespace ringfill {
namespace {

/// Arc within the period that begins with a step.
Time arc_from(const std::vector<HeatStep>& steps, std::size_t first, Time period) {
    Time arc = {};
    Time left = period;
    for (std::size_t i = first; i < steps.size() && left > Time(); ++i) {
        const Time here = std::min(left, steps[i].time);
        if (steps[i].stage == HeatStage::weld)
            arc += here;
        left -= here;
    }
    return arc;
}

} // namespace

Time busiest_arc(const std::vector<HeatStep>& steps, Time period) {
    // Of all stretches one that begins with a weld is the busiest: moving it there loses no arc.
    Time most = {};
    for (std::size_t i = 0; i < steps.size(); ++i)
        if (steps[i].stage == HeatStage::weld)
            most = std::max(most, arc_from(steps, i, period));
    return most;
}

} // namespace ringfill
