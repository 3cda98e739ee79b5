#include <ringfill/heat/warm_up.hpp>

#include <algorithm>

#include <ringfill/heat/boss_balance.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr double usual_limit_s = 2 * factor::hour;
constexpr double most_times_the_power = 64;
constexpr double known_within = 1.01;
constexpr double longest_step_at_a_rate = 30;
/// A heater that must be turned off and on more often is not handled.
constexpr int most_turns = 1000;

/// Whether the bore, which warms ever more slowly while the outside is held at its limit, would still be too
/// cold in the end: asked each half hour.
class TooSlow {
  public:
    bool is_so(double seconds, double under_K, double left) {
        if (seconds < next_)
            return false;
        const bool is_too_slow = before_ && (*before_ - under_K) / asked_each_s * left < under_K;
        before_ = under_K;
        next_ = seconds + asked_each_s;
        return is_too_slow;
    }

  private:
    static constexpr double asked_each_s = factor::hour / 2;
    double next_ = asked_each_s;
    std::optional<double> before_ = {};
};

} // namespace

WarmedUp warm_up(BossWalk& walk, const WarmUpRule& rule) {
    const BossMesh& mesh = walk.mesh();
    const double began = walk.seconds();
    const double heat_before = walk.heater_heat();
    const double on_before = walk.heater_time();
    const double lost_before = walk.field().lost;
    const auto under_bore = [&](const BossField& field) { return coldest_bore(mesh, field) - rule.bore; };
    WarmedUp warm;
    TooSlow too_slow;
    bool is_on = true;
    int turns = 0;
    while (!(warm.is_ready = under_bore(walk.field()) > -met_within_K)) {
        const double left = rule.most_seconds - (walk.seconds() - began);
        if (!(left > 0) || ++turns > most_turns ||
            too_slow.is_so(walk.seconds() - began, -under_bore(walk.field()), left))
            break;
        BossLoad load;
        load.wrapped_outside = rule.wrapped;
        load.heater = is_on ? rule.power : 0;
        walk.put(load);
        if (rule.fastest && is_on)
            walk.control(
                [&](const BossField& field) {
                    return std::min(rule.power, *rule.fastest * capacity(walk.equation(), field) +
                                                    outflow(walk.equation(), field, load));
                },
                longest_step_at_a_rate);
        walk.advance_to(
            [&](const BossField& field) {
                const double skin = mean_skin(mesh, field);
                return std::max(under_bore(field),
                                is_on ? skin - rule.skin : rule.skin - skin_falls_K - skin);
            },
            left);
        walk.control(nullptr, 0);
        warm.skin_waited = warm.skin_waited || (is_on && mean_skin(mesh, walk.field()) > rule.skin - 0.01);
        is_on = !is_on;
    }
    BossLoad off = walk.load();
    off.heater = 0;
    walk.put(off);
    warm.time = in_si<Time>(walk.seconds() - began);
    warm.heating = in_si<Time>(walk.heater_time() - on_before);
    warm.skin = in_si<Temperature>(mean_skin(mesh, walk.field()));
    warm.bore = in_si<Temperature>(mean_bore(mesh, walk.field()));
    warm.mean = in_si<Temperature>(mean_boss(mesh, walk.field()));
    warm.heat = in_si<Energy>(walk.heater_heat() - heat_before);
    warm.lost = in_si<Energy>(walk.field().lost - lost_before);
    return warm;
}

Energy warm_the_rest(BossWalk& walk, WarmedUp& warm, Mass rest, Power heater) {
    const HeatCurves& metal = walk.equation().metal();
    const double content = metal.e(warm.mean.value()) - metal.e(walk.equation().ambient());
    const Energy heat = in_si<Energy>(rest.value() * content);
    const Time needed = (warm.heat + heat) / heater;
    const Time more = std::max(Time(), needed - warm.time);
    walk.warm_aside(more.value(), heat.value());
    warm.time += more;
    warm.heating = std::max(warm.heating, needed);
    warm.heat += heat;
    return heat;
}

std::optional<double> least_power(BossEquation& equation, WarmUpRule rule) {
    rule.most_seconds = usual_limit_s;
    const auto with = [&](double power) {
        rule.power = power;
        BossWalk walk(equation);
        return warm_up(walk, rule);
    };
    double too_little = rule.power;
    double enough = 2 * rule.power;
    const double most = most_times_the_power * rule.power;
    for (WarmedUp trial = with(enough); !trial.is_ready; trial = with(enough)) {
        // Off for half of the time: the outside stands in the way, and more power does not help.
        if (enough >= most || trial.heating < 0.5 * trial.time)
            return std::nullopt;
        too_little = enough;
        enough *= 2;
    }
    while (enough > known_within * too_little) {
        const double middle = (too_little + enough) / 2;
        (with(middle).is_ready ? enough : too_little) = middle;
    }
    return enough;
}

} // namespace ringfill
