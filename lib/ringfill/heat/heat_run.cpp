#include <ringfill/heat/heat_run.hpp>

#include <algorithm>
#include <cmath>
#include <tuple>

#include <ringfill/heat/thermal_history.hpp>
#include <ringfill/heat/warming_rate.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

/// A temperature met by root finding is at the limit, not past it [K].
constexpr double at_limit_K = 1e-6;

/// Parts that a long stretch of the curve is drawn in.
constexpr int drawn_parts = 12;

/// A run as it goes on: the run so far, where the boss stands, the arc since the last break.
class Follower {
  public:
    Follower(const HeatRunSettings& settings) : settings_(settings), limits_(settings) {
        state_.temperature = settings.boss.ambient;
        run_.peak = run_.ring_peak = state_.temperature;
        note();
    }

    HeatRun follow(const std::vector<RingPass>& passes) {
        if (warm_up()) {
            const bool is_welded = weld(passes);
            run_.welding_ends = state_.temperature;
            run_.lost = state_.lost;
            if (is_welded && hold())
                cool();
        }
        return std::move(run_);
    }

  private:
    bool warm_up() {
        ThermalLump all = settings_.boss;
        all.mass = settings_.heated;
        if (state_.temperature < settings_.minimum) {
            const auto warm = when_at(all, state_, settings_.heater, settings_.minimum);
            if (!warm)
                return give_up(HeatEnd::heater_too_small, settings_.minimum);
            const double rise_K = settings_.minimum.value() - settings_.boss.ambient.value();
            const Warming slow = kept_to_rate({warm->time, settings_.heater * warm->time, warm->lost}, rise_K,
                                              settings_.warming_max_K_per_h);
            draw(all, settings_.heater, warm->time);
            run_.warm_up = slow.time; // the run begins here
            run_.warm_up_heat = slow.heat;
            run_.lost_warming = slow.lost;
            go({HeatStage::warm_up}, slow.time, {warm->temperature, slow.lost, slow.time, warm->evaluations});
        }
        run_.welding_begins = state_.temperature;
        state_.lost = Energy();
        return true;
    }

    bool weld(const std::vector<RingPass>& passes) {
        for (const RingPass& pass : passes) {
            if (settings_.later && pass.layer > 1)
                std::tie(limits_.minimum, limits_.maximum) = *settings_.later;
            for (std::size_t ring = 0; ring < pass.rings.size(); ++ring) {
                if (!come_between(last_pass_ ? *last_pass_ : pass))
                    return false;
                last_pass_ = &pass;
                last_ring_ = static_cast<int>(ring + 1);
                lay(pass, pass.rings[ring]);
                if (!std::isfinite(run_.ring_peak.value())) // the boss is too light for any number
                    return give_up(HeatEnd::never_cools, limits_.maximum);
            }
        }
        return true;
    }

    /// Stops or reheats until a ring may begin. A break before the first ring of a layer comes after the last
    /// ring of the layer before it.
    bool come_between(const RingPass& pass) {
        const double t = state_.temperature.value();
        if (t > limits_.maximum.value() + at_limit_K)
            return break_for(HeatStage::stop, pass, Power(), resumes_at());
        if (t < limits_.minimum.value() - at_limit_K)
            return break_for(HeatStage::reheat, pass, settings_.heater, reheated_to(limits_));
        return true;
    }

    /// Where the arc may begin again after a stop: as cool as the rule says, but no cooler than a little over
    /// the air, which the boss would never come down to.
    Temperature resumes_at() const {
        if (settings_.in_stitches)
            return lower(limits_.maximum,
                         (1 - stitch_share) * (limits_.maximum.value() - settings_.boss.ambient.value()));
        const Temperature rule = std::max(limits_.minimum, lower(limits_.maximum, stop_depth_K));
        return std::min(limits_.maximum, std::max(rule, lower(settings_.boss.ambient, -over_air_K)));
    }

    bool break_for(HeatStage stage, const RingPass& pass, Power power, Temperature target) {
        const auto there = when_at(settings_.boss, state_, power, target);
        if (!there)
            return give_up(stage == HeatStage::stop ? HeatEnd::never_cools : HeatEnd::heater_too_small,
                           target);
        const Time time = there->time - state_.time;
        if (stage == HeatStage::stop) {
            ++run_.stops;
            run_.waiting += time;
        } else {
            ++run_.reheats;
            run_.reheating += time;
            run_.reheat_heat += power * time;
        }
        go({stage, pass.pass, pass.layer, last_ring_}, time, *there);
        return true;
    }

    void lay(const RingPass& pass, Time time) {
        const ThermalState then = after(settings_.boss, state_, settings_.arc, time);
        run_.welding += time;
        run_.arc_heat += settings_.arc * time;
        if (!(then.temperature <= run_.ring_peak)) // what is no number too
            run_.ring_peak = then.temperature;
        HeatStep* last = run_.steps.empty() ? nullptr : &run_.steps.back();
        if (last && last->stage == HeatStage::weld && last->pass == pass.pass && last->layer == pass.layer) {
            last->time += time;
            last->after_ring = last_ring_;
            last->to = then.temperature;
            state_ = then;
            note();
        } else {
            go({HeatStage::weld, pass.pass, pass.layer, last_ring_}, time, then);
        }
    }

    /// Comes down towards a temperature no faster than it may, until it cools slower by itself; how long that
    /// takes, or nothing when it never gets there.
    std::optional<Time> keep_to_rate(Temperature target) {
        const Temperature slow_to = std::max(target, settings_.cooling_slow_down_to.value_or(target));
        if (!settings_.cooling_max_K_per_h || state_.temperature <= slow_to)
            return Time();
        const auto slow = cool_slowly(settings_.boss, state_.temperature, slow_to,
                                      *settings_.cooling_max_K_per_h / factor::hour);
        if (!slow)
            return std::nullopt;
        run_.slow_heat += slow->heat;
        state_ = {slow->free_from, state_.lost, state_.time + slow->held, state_.evaluations};
        note();
        return slow->held;
    }

    /// The post-heat, if any; from below the boss is heated to it.
    bool hold() {
        if (!settings_.hold_at)
            return true;
        const Temperature target = *settings_.hold_at;
        const Temperature last_ring = state_.temperature;
        const auto slow = keep_to_rate(target);
        if (!slow)
            return give_up(HeatEnd::never_cools, target);
        run_.post_heating = *slow;
        const Power power = state_.temperature < target ? settings_.heater : Power();
        const auto there = when_at(settings_.boss, state_, power, target);
        const Power loss = heat_loss(settings_.boss, target);
        if (!there && state_.temperature > target)
            return give_up(HeatEnd::never_cools, target);
        if (!there || settings_.heater < loss)
            return give_up(HeatEnd::heater_too_small, target);
        const Time reaching = there->time - state_.time;
        run_.post_heating += reaching + settings_.hold_for;
        run_.post_heat_heat = power * reaching + std::max(loss, Power()) * settings_.hold_for;
        draw(settings_.boss, power, reaching);
        state_ = *there;
        note();
        ThermalState held = *there;
        held.time += settings_.hold_for;
        go({HeatStage::post_heat}, run_.post_heating, held);
        run_.steps.back().from = last_ring;
        return true;
    }

    void cool() {
        run_.cooling_to_rough = cool_to(HeatStage::cool_to_rough, settings_.rough_below);
        if (run_.cooling_to_rough)
            run_.cooling_to_finish = cool_to(HeatStage::cool_to_finish, settings_.finish_below);
    }

    std::optional<Time> cool_to(HeatStage stage, Temperature target) {
        if (state_.temperature <= target)
            return Time();
        const ThermalState begin = state_;
        const auto there =
            keep_to_rate(target) ? when_at(settings_.boss, state_, Power(), target) : std::nullopt;
        if (!there)
            return std::nullopt;
        draw(settings_.boss, Power(), there->time - state_.time);
        go({stage}, there->time - begin.time, *there);
        run_.steps.back().from = begin.temperature;
        return there->time - begin.time;
    }

    /// Points of the curve within a stretch of one power, so that it is drawn as it bends.
    void draw(const ThermalLump& lump, Power power, Time time) {
        for (const ThermalState& at : on_the_way(lump, state_, power, time, drawn_parts))
            run_.curve.push_back({at.time, at.temperature});
    }

    bool give_up(HeatEnd end, Temperature at) {
        run_.end = end;
        run_.end_at = at;
        return false;
    }

    /// Goes on to a state, which a step of the run leads to.
    void go(HeatStep step, Time time, const ThermalState& then) {
        step.time = time;
        step.from = state_.temperature;
        step.to = then.temperature;
        run_.steps.push_back(std::move(step));
        state_ = then;
        note();
    }

    void note() {
        run_.peak = std::max(run_.peak, state_.temperature);
        run_.curve.push_back({state_.time, state_.temperature});
    }

    static Temperature lower(Temperature at, double kelvin) {
        return in_si<Temperature>(at.value() - kelvin);
    }

    const HeatRunSettings& settings_;
    HeatRunSettings limits_; ///< of the pass that is laid
    HeatRun run_;
    ThermalState state_;
    const RingPass* last_pass_ = nullptr; ///< of the last ring laid
    int last_ring_ = 0;
};

} // namespace

HeatRun heat_run(const HeatRunSettings& settings, const std::vector<RingPass>& passes) {
    return Follower(settings).follow(passes);
}

} // namespace ringfill
