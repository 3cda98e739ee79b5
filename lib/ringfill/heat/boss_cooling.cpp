#include <ringfill/heat/boss_cooling.hpp>

#include <algorithm>

#include <ringfill/heat/boss_balance.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr double longest_cooling_s = 240 * factor::hour;
constexpr double slow_step_s = 60;

} // namespace

std::optional<double> come_down(BossWalk& walk, const HeatRunSettings& settings, CoolingCover cover,
                                double kelvin) {
    const BossMesh& mesh = walk.mesh();
    BossLoad load;
    load.wrapped_bore = load.wrapped_outside = cover.boss;
    load.wrapped_plates = cover.plates;
    walk.put(load);
    const auto slowing = [&](const BossField& field) {
        const double rate = *settings.cooling_max_K_per_h / factor::hour;
        return std::max(0.0, outflow(walk.equation(), field, load) - rate * capacity(walk.equation(), field));
    };
    const double slow_to = settings.cooling_slow_down_to ? settings.cooling_slow_down_to->value() : 0;
    const double began = walk.seconds();
    double before = mean_bore(mesh, walk.field());
    std::optional<double> time;
    if (before <= kelvin)
        time = 0;
    while (!time && walk.seconds() - began < longest_cooling_s) {
        // Once it cools more slowly by itself, it does so to the end.
        const bool is_slowed =
            cover.keeps_rate && settings.cooling_max_K_per_h && before > slow_to && slowing(walk.field()) > 0;
        walk.control(is_slowed ? HeaterControl(slowing) : HeaterControl(), slow_step_s);
        if (!is_slowed) // the heater goes out
            walk.put(load);
        const BossWalk begin = walk;
        const double length = walk.step(longest_cooling_s);
        const double now = mean_bore(mesh, walk.field());
        if (now <= kelvin) {
            const double part = length * (before - kelvin) / (before - now);
            walk = begin;
            walk.step_by(part);
            time = walk.seconds() - began;
        }
        before = now;
    }
    walk.control(nullptr, 0);
    return time;
}

BossCooling cool_down(BossWalk& walk, const HeatRunSettings& settings, CoolingCover cover) {
    BossCooling cooling;
    const double heat_before = walk.heater_heat();
    const double began = walk.seconds();
    if (const auto time = come_down(walk, settings, cover, settings.rough_below.value())) {
        cooling.to_rough = in_si<Time>(*time);
        if (const auto more = come_down(walk, settings, cover, settings.finish_below.value()))
            cooling.to_finish = in_si<Time>(*more);
    }
    cooling.heat = in_si<Energy>(walk.heater_heat() - heat_before);
    cooling.slowed = in_si<Time>(std::max(0.0, walk.heated_until() - began));
    return cooling;
}

} // namespace ringfill
