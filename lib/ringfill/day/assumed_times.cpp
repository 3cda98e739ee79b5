#include <ringfill/day/assumed_times.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/any_of.hpp>

#include <ringfill/day/day_work.hpp>
#include <ringfill/heat/pauses.hpp>

namespace ringfill {

std::vector<Assumed> assumed_times(const Job& job, const std::vector<Settings>& settings,
                                   const std::vector<BorePlan>& bores, const std::vector<StepTime>& times) {
    std::vector<Assumed> assumed;
    const Sourced<Time>& cleaning = step_time(times, "clean a layer").time;
    for (const Settings& own : settings) {
        const Handling& handling = handling_of(own.filler->process);
        const Sourced<Time>& in_a_minute = step_time(times, handling.standing).time;
        const auto cleans_longer = [&](const BorePlan& bore) {
            return bore.procedure == own.procedure->name && bore.heat_balance &&
                   bore.heat_balance->hot.settings.cleaning > cleaning.value;
        };
        if (handling.after_each_ring && !own.procedure->step_over)
            assumed.push_back(
                {own.procedure->path + ".step_over",
                 fmt::format("{}, and {} for each minute of arc in the longest ring",
                             show(step_time(times, "step a ring").time.value), show(in_a_minute.value)),
                 in_a_minute.source});
        else if (ranges::any_of(bores, cleans_longer))
            assumed.push_back({fmt::format("standing_times.{}", handling.standing),
                               fmt::format("{} for each minute of arc in the longest layer of {}",
                                           show(in_a_minute.value), own.procedure->name),
                               in_a_minute.source});
    }
    if (ranges::any_of(bores, preheats_by_flame)) {
        const StepTime& rigging = step_time(times, steps::rig_burner.standing);
        assumed.push_back({"standing_times.rig burner", show(rigging.time.value), rigging.time.source});
    }
    Time soak;
    for (const BorePlan& bore : bores)
        if (soaks_by_wall(job, bore) && soaking_time(bore) > usual_start_delay)
            soak = std::max(soak, soaking_time(bore));
    if (soak > Time())
        assumed.push_back(
            {"heater.start_delay", show(soak) + " at most, 2 min in 25 mm of wall", "ISO13916"});
    return assumed;
}

} // namespace ringfill
