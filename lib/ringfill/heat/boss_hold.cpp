#include <ringfill/heat/boss_hold.hpp>

#include <algorithm>

#include <ringfill/heat/boss_balance.hpp>
#include <ringfill/heat/boss_cooling.hpp>

namespace ringfill {
namespace {

constexpr double longest_step_of_hold_s = 30;
/// What the coldest place of the bore is under the hold is made good in so long [own choice].
constexpr double brought_back_in_s = 300;
/// A hold is begun this near, and counts as held while the bore falls no further [K; own choice].
constexpr double held_within_K = 1;
constexpr double hold_falls_K = 15;

} // namespace

BossHold hold_hot(BossWalk& walk, const HeatRunSettings& settings, WarmUpRule rule) {
    const double target = settings.hold_at->value();
    const double began = walk.seconds();
    const double heat_before = walk.heater_heat();
    const auto bore = [&] { return mean_bore(walk.mesh(), walk.field()); };
    BossHold hold;
    if (!come_down(walk, settings, {false, false, true}, target)) {
        hold.end = HeatEnd::never_cools;
        return hold;
    }
    rule.bore = target;
    rule.skin = std::max(rule.skin, target + 2 * skin_falls_K);
    const bool is_there = bore() > target - held_within_K || warm_up(walk, rule).is_ready;
    BossLoad load;
    load.wrapped_outside = settings.heater_stays;
    walk.put(load);
    walk.control(
        [&](const BossField& field) {
            const double under = target - coldest_bore(walk.mesh(), field);
            return std::clamp(outflow(walk.equation(), field, load) +
                                  capacity(walk.equation(), field) * under / brought_back_in_s,
                              0.0, settings.heater.value());
        },
        longest_step_of_hold_s);
    walk.advance(is_there ? settings.hold_for.value() : 0);
    walk.control(nullptr, 0);
    hold.lost = in_si<Power>(outflow(walk.equation(), walk.field(), load));
    if (!is_there || bore() < target - hold_falls_K)
        hold.end = HeatEnd::heater_too_small;
    hold.time = in_si<Time>(walk.seconds() - began);
    hold.heat = in_si<Energy>(walk.heater_heat() - heat_before);
    return hold;
}

} // namespace ringfill
