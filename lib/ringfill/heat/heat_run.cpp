#include <ringfill/heat/heat_run.hpp>

#include <algorithm>
#include <utility>

#include <ringfill/heat/boss_balance.hpp>
#include <ringfill/heat/boss_cooling.hpp>
#include <ringfill/heat/boss_hold.hpp>
#include <ringfill/heat/heat_log.hpp>
#include <ringfill/heat/ring_window.hpp>
#include <ringfill/heat/run_equation.hpp>
#include <ringfill/heat/stitches.hpp>
#include <ringfill/heat/surface_loss.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double longest_warm_up_s = 6 * factor::hour;
/// Where a rate sets the pace, this many times what the rate itself needs.
constexpr double warm_up_at_rate = 1.5;
/// A heater that stays warms the bore so far over the minimum.
constexpr double over_minimum_K = 2;
/// Over this the boss as a whole is near melting.
const Temperature near_melting = celsius(1400);

/// A run as it goes on.
class Follower {
  public:
    explicit Follower(const HeatRunSettings& settings)
        : settings_(settings), equation_(equation_of(settings)), walk_(equation_), window_(settings),
          log_(run_, walk_, settings.step_over) {
        run_.boss = in_si<Mass>(boss_mass(equation_)); // or the casting that it stands for
        run_.ring_peak = run_.hottest_start = settings.ambient;
    }

    HeatRun follow(const std::vector<RingPass>& passes) {
        if (warm()) {
            const bool is_welded = weld(settings_.by_stitches ? in_stitches(passes) : passes);
            run_.welding_ends = log_.mean();
            run_.lost = in_si<Energy>(walk_.field().lost);
            run_.stored = in_si<Energy>(equation_.content(walk_.field()) - content_at_begin_) + rest_heat_;
            run_.reheat_heat = in_si<Energy>(walk_.heater_heat()) - run_.warm_up_heat;
            if (is_welded && hold())
                cool();
        }
        return std::move(run_);
    }

  private:
    bool give_up(HeatEnd end, Temperature at) {
        run_.end = end;
        run_.end_at = at;
        return false;
    }

    double bore() const { return mean_bore(walk_.mesh(), walk_.field()); }

    WarmUpRule warm_up_rule() const {
        WarmUpRule rule;
        const double minimum = settings_.minimum.value();
        const bool is_hand_warm = settings_.heater_stays || !(settings_.minimum > chill_off);
        rule.bore = is_hand_warm ? minimum + over_minimum_K
                                 : reheated_to(settings_.minimum, settings_.maximum).value();
        rule.skin = settings_.skin.value();
        rule.power = settings_.heater.value();
        rule.most_seconds = longest_warm_up_s;
        rule.wrapped = settings_.heater_stays;
        if (settings_.heating_max_K_per_h) {
            rule.fastest = *settings_.heating_max_K_per_h / factor::hour;
            const double at_rate = (rule.bore - settings_.ambient.value()) / *rule.fastest;
            rule.most_seconds = std::max(rule.most_seconds, warm_up_at_rate * at_rate);
        }
        return rule;
    }

    bool warm() {
        const Temperature from = log_.mean();
        if (from < settings_.minimum) {
            const WarmUpRule rule = warm_up_rule();
            run_.warm_up = warm_up(walk_, rule);
            run_.warm_up_heat = run_.warm_up.heat;
            if (!run_.warm_up.is_ready) {
                if (run_.warm_up.skin_waited)
                    return give_up(HeatEnd::skin_in_the_way, settings_.minimum);
                if (const auto power = least_power(equation_, rule))
                    run_.needed = in_si<Power>(*power);
                return give_up(HeatEnd::heater_too_small, settings_.minimum);
            }
            if (settings_.part > run_.boss && !settings_.by_stitches)
                rest_heat_ = warm_the_rest(walk_, run_.warm_up, settings_.part - run_.boss, settings_.heater);
            run_.warm_up_heat = run_.warm_up.heat;
            log_.add(HeatStage::warm_up, 0, from);
            make_ready();
        }
        run_.welding_begins = log_.mean();
        return true;
    }

    /// From heater off to the first arc.
    void make_ready() {
        const double began = walk_.seconds();
        const Temperature warmed = log_.mean();
        window_.let_heater_stay(walk_);
        walk_.advance(settings_.start_delay.value());
        run_.delay = settings_.start_delay;
        if (walk_.seconds() > began)
            log_.add(HeatStage::make_ready, began, warmed);
    }

    bool weld(const std::vector<RingPass>& passes) {
        window_.let_heater_stay(walk_);
        const double began = walk_.seconds();
        const double on_before = walk_.heater_time();
        const double heat_before = walk_.heater_heat();
        for (const RingPass& pass : passes)
            if (!weld_layer(pass))
                return false;
        walk_.control(nullptr, 0);
        if (const double time = walk_.seconds() - began; settings_.heater_stays && time > 0)
            run_.held = HeldHeat{(walk_.heater_time() - on_before) / time,
                                 in_si<Power>((walk_.heater_heat() - heat_before) / time)};
        return true;
    }

    bool weld_layer(const RingPass& pass) {
        log_.begin_layer(pass);
        if (settings_.later && pass.layer > 1) {
            window_.limit_to(settings_.later->first, settings_.later->second);
            window_.let_heater_stay(walk_);
        }
        for (std::size_t ring = 0; ring < pass.rings.size(); ++ring) {
            const auto [from, to] = heated_band(pass, ring);
            const BoreBand band{from.value(), to.value()};
            if (!come_to(pass, ring, band))
                return false;
            const double began = walk_.seconds();
            window_.lay(walk_, pass.rings[ring].value(), band);
            run_.arc_heat += settings_.arc * pass.rings[ring];
            log_.add_ring(began);
            run_.stitches += settings_.by_stitches;
            if (!(run_.ring_peak < near_melting) ||
                !(log_.mean() < near_melting)) // of a film of metal not even a number
                return give_up(HeatEnd::melts, near_melting);
        }
        log_.end_layer();
        return true;
    }

    /// What comes before a ring.
    bool come_to(const RingPass& pass, std::size_t ring, const BoreBand& band) {
        if (pass.is_helix && ring > 0 && window_.may_go_on(walk_, band.middle())) {
            log_.add_turn();
            return true;
        }
        const Time least = !log_.has_begun() ? Time() : ring > 0 ? settings_.step_over : settings_.cleaning;
        const double began = walk_.seconds();
        const Temperature from = log_.mean();
        const RingPause pause = window_.come_between(walk_, least.value(), band.middle());
        if (pause.end != HeatEnd::done) {
            if (pause.end == HeatEnd::window_not_held)
                run_.needed = in_si<Power>(power_to_hold());
            return give_up(pause.end,
                           pause.end == HeatEnd::never_cools ? settings_.maximum : settings_.minimum);
        }
        if (const auto spot = in_si<Temperature>(pause.start_spot); spot > run_.hottest_start) {
            run_.hottest_start = spot;
            run_.start_excess_K = pause.start_spot - pause.band;
        }
        if (!log_.has_begun()) {
            run_.begin_loss = in_si<Power>(outflow(equation_, walk_.field(), window_.between()));
            run_.begin_capacity = capacity(equation_, walk_.field());
            run_.to_hold = run_.begin_loss;
        }
        log_.add_pause(pause, began, from);
        return true;
    }

    /// What the boss loses as it stands, raised so that its coldest place would stand at the minimum.
    double power_to_hold() const {
        const double air = settings_.ambient.value();
        const double coldest = coldest_bore(walk_.mesh(), walk_.field());
        const double lost = outflow(equation_, walk_.field(), window_.between());
        return coldest > air ? lost * std::max(1.0, (settings_.minimum.value() - air) / (coldest - air))
                             : lost;
    }

    /// The post-heat, if any.
    bool hold() {
        if (!settings_.hold_at)
            return true;
        const double began = walk_.seconds();
        const Temperature last_ring = log_.mean();
        const BossHold held = hold_hot(walk_, settings_, warm_up_rule());
        run_.to_hold = std::max(run_.to_hold, held.lost);
        if (held.end != HeatEnd::done) {
            run_.needed = held.lost;
            return give_up(held.end, *settings_.hold_at);
        }
        run_.post_heating = held.time;
        run_.post_heat_heat = held.heat;
        log_.add(HeatStage::post_heat, began, last_ring);
        return true;
    }

    /// The way it is counted goes into the steps and the curve, kept to its rate; the others stand beside it.
    void cool() {
        const bool wrapped = settings_.cooling_max_K_per_h.has_value();
        run_.cools_wrapped = wrapped;
        const BossWalk hot = walk_;
        const auto aside = [&](CoolingCover cover) {
            BossWalk walk = hot;
            walk.trace(nullptr);
            return cool_down(walk, settings_, cover);
        };
        (wrapped ? run_.bare : run_.wrapped) = aside({!wrapped, false});
        if (!settings_.boss.plates.empty())
            run_.wrapped_with_plates = aside({true, true});
        const Temperature from = in_si<Temperature>(bore());
        BossCooling& counted = wrapped ? run_.wrapped : run_.bare;
        counted = cool_down(walk_, settings_, {wrapped, false, true});
        log_.add_cooling(HeatStage::cool_to_rough, counted.to_rough, from, settings_.rough_below);
        log_.add_cooling(HeatStage::cool_to_finish, counted.to_finish, std::min(from, settings_.rough_below),
                         settings_.finish_below);
        log_.note();
    }

    const HeatRunSettings& settings_;
    BossEquation equation_;
    BossWalk walk_;
    RingWindow window_;
    HeatRun run_;
    HeatLog log_;
    Energy rest_heat_; ///< in the rest of a casting
    double content_at_begin_ = equation_.content(walk_.field());
};

} // namespace

Temperature reheated_to(Temperature minimum, Temperature maximum) {
    const double half = (maximum.value() - minimum.value()) / 2;
    return in_si<Temperature>(
        std::min(minimum.value() + std::min(reheat_depth_K, half), maximum.value() - start_margin_K));
}

HeatRun heat_run(const HeatRunSettings& settings, const std::vector<RingPass>& passes) {
    return Follower(settings).follow(passes);
}

} // namespace ringfill
