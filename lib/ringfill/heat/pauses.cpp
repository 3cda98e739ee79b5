#include <ringfill/heat/pauses.hpp>

#include <algorithm>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr Handling handlings[] = {{"gas_metal_arc", "clean solid wire"},
                                  {"metal_cored_arc", "clean solid wire"},
                                  {"flux_cored_arc", "chip flux-cored wire", true},
                                  {"self_shielded_arc", "chip flux-cored wire", true},
                                  {"manual_metal_arc", "change and chip electrodes", true},
                                  {"gas_tungsten_arc", "clean rods"},
                                  {"torch_brazing", "clean rods"}};

/// The longest arc of a ring, or of a layer.
Time longest_arc(const std::vector<RingPass>& passes, bool of_ring) {
    Time longest;
    for (const RingPass& pass : passes) {
        Time layer;
        for (const Time& ring : pass.rings) {
            layer += ring;
            longest = of_ring ? std::max(longest, ring) : longest;
        }
        longest = of_ring ? longest : std::max(longest, layer);
    }
    return longest;
}

} // namespace

const Handling& handling_of(std::string_view process) {
    return *ranges::find(handlings, process, &Handling::process);
}

LeastPauses pauses_of(const Settings& settings, const std::vector<RingPass>& passes,
                      const std::vector<StepTime>& times) {
    const auto standing = [&](std::string_view step) { return step_time(times, step).time.value; };
    const Handling& handling = handling_of(settings.filler->process);
    const double share = standing(handling.standing).value() / factor::minute; // minutes in a minute of arc
    const Time by_arc = share * longest_arc(passes, handling.after_each_ring);
    const Time step = standing("step a ring");
    const Time cleaning = standing("clean a layer");
    if (handling.after_each_ring)
        return {settings.procedure->step_over.value_or(step + by_arc), cleaning};
    return {settings.procedure->step_over.value_or(step), std::max(cleaning, by_arc)};
}

} // namespace ringfill
