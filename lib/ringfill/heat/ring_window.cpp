#include <ringfill/heat/ring_window.hpp>

#include <algorithm>

#include <ringfill/heat/boss_balance.hpp>
#include <ringfill/heat/stitches.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

// How far under the maximum a ring begins where the start spot is known less well [K; section 9].
constexpr double after_first_ring_K = 15;
constexpr double after_short_pause_K = 40;
const Length wide_pitch = millimetres(6);
constexpr double short_pause_s = 10;

// How often a wait is looked at.
constexpr double look_share = 0.12;
constexpr double least_look_s = 2;
constexpr double most_look_s = 10;
constexpr double bent_by_K = 0.5;
constexpr double long_look_share = 0.05; // of waits of many minutes, in which little changes

/// A heater that stays is on while the coldest place of the bore is not so far over the minimum.
constexpr double held_over_K = 3;
constexpr double held_step_s = 15;

// A boss that does not come between its limits within these cannot be held there.
constexpr double most_cold_s = 1'800;
constexpr int most_rounds = 20;
constexpr double most_hot_and_held_s = 6 * factor::hour;
constexpr double most_wait_s = 240 * factor::hour;

} // namespace

BossLoad RingWindow::between() const {
    BossLoad load;
    load.wrapped_outside = settings_.heater_stays;
    return load;
}

void RingWindow::let_heater_stay(BossWalk& walk) const {
    if (!settings_.heater_stays)
        return;
    const double on_under = minimum_ + held_over_K;
    const double power = settings_.heater.value();
    walk.control([&mesh = walk.mesh(), on_under, power](
                     const BossField& field) { return coldest_bore(mesh, field) < on_under ? power : 0.0; },
                 held_step_s);
}

double RingWindow::spot(const BossWalk& walk, double depth) const {
    const double band = bore_at(walk.mesh(), walk.field(), depth);
    std::vector<LaidRing> felt = laid_;
    for (LaidRing& ring : felt)
        ring.ended_ago = walk.seconds() - ring.ended_ago;
    return band + start_spot_excess(walk.mesh(), walk.equation().metal(), felt, depth, band);
}

/// How far over what the rules allow the place is where a ring would begin [K].
double RingWindow::over_limit(const BossWalk& walk, double depth) const {
    if (settings_.by_stitches)
        return mean_boss(walk.mesh(), walk.field()) -
               stitch_begins_under(settings_.ambient, in_si<Temperature>(maximum_)).value();
    double margin = start_margin_K;
    if (rings_ > 0 && walk.seconds() - laid_.back().ended_ago < short_pause_s)
        margin = after_short_pause_K;
    else if (rings_ == 1 && settings_.boss.pitch >= wide_pitch)
        margin = after_first_ring_K;
    return spot(walk, depth) - (maximum_ - margin);
}

bool RingWindow::may_go_on(const BossWalk& walk, double depth) const {
    return bore_at(walk.mesh(), walk.field(), depth) <= maximum_ - start_margin_K &&
           coldest_bore(walk.mesh(), walk.field()) >= minimum_ - met_within_K;
}

void RingWindow::lay(BossWalk& walk, double seconds, const BoreBand& band) {
    BossLoad load = between();
    load.heater = walk.load().heater; // as it is, until its rule is asked
    load.arc = settings_.arc.value();
    load.band = band;
    walk.put(load);
    walk.advance(seconds);
    laid_.push_back({band.middle(), load.arc, seconds, walk.seconds()});
    if (laid_.size() > rings_felt)
        laid_.erase(laid_.begin());
    ++rings_;
}

/// Reheats, or waits for a heater that stays; false where that takes too long.
bool RingWindow::warm_again(BossWalk& walk, RingPause& pause, double& cold_time) const {
    const BossMesh& mesh = walk.mesh();
    BetweenRings part{!settings_.heater_stays, 0, mean_boss(mesh, walk.field()), 0};
    const double began = walk.seconds();
    bool is_warm = false;
    if (settings_.heater_stays) {
        is_warm =
            walk.advance_to([&](const BossField& field) { return coldest_bore(mesh, field) - minimum_; },
                            most_cold_s - cold_time);
    } else {
        WarmUpRule rule;
        rule.bore = reheated_to(in_si<Temperature>(minimum_), in_si<Temperature>(maximum_)).value();
        rule.skin = settings_.skin.value();
        rule.power = settings_.heater.value();
        rule.most_seconds = most_cold_s - cold_time;
        is_warm = warm_up(walk, rule).is_ready;
    }
    part.seconds = walk.seconds() - began;
    part.to = mean_boss(mesh, walk.field());
    cold_time += part.seconds;
    if (!part.is_reheat)
        pause.waited += part.seconds;
    pause.parts.push_back(part);
    return is_warm;
}

/// Waits until the place where the ring begins is cool enough; false where it never is.
bool RingWindow::wait(BossWalk& walk, RingPause& pause, double depth) const {
    const BossMesh& mesh = walk.mesh();
    BetweenRings part{false, 0, mean_boss(mesh, walk.field()), 0};
    const double longest = settings_.heater_stays ? most_hot_and_held_s : most_wait_s;
    double over = over_limit(walk, depth);
    while (over > 0) {
        if (pause.waited > longest)
            return false;
        double look = std::clamp(look_share * pause.waited, least_look_s,
                                 std::max(most_look_s, long_look_share * pause.waited));
        const double so_far = rings_ > 0 ? walk.seconds() - laid_.back().ended_ago : short_pause_s;
        if (so_far < short_pause_s)
            look = std::min(look, short_pause_s - so_far + 1e-9);
        const BossWalk before = walk;
        walk.advance(look);
        double there = over_limit(walk, depth);
        if (there <= 0) {
            look *= over / (over - there);
            walk = before;
            walk.advance(look);
            // In a thin boss that cools fast the crossing is far from linear: then it waits on.
            there = over_limit(walk, depth);
            there = there > bent_by_K ? there : 0;
        }
        pause.waited += look;
        part.seconds += look;
        over = there;
    }
    part.to = mean_boss(mesh, walk.field());
    pause.parts.push_back(part);
    return true;
}

RingPause RingWindow::come_between(BossWalk& walk, double least, double depth) {
    BossLoad load = between();
    load.heater = walk.load().heater;
    walk.put(load);
    RingPause pause;
    pause.least = least;
    pause.is_told_apart = !settings_.by_stitches;
    walk.advance(least);
    double cold_time = 0;
    bool has_waited = false;
    for (int rounds = 0;;) {
        if (coldest_bore(walk.mesh(), walk.field()) < minimum_ - met_within_K) {
            if (++rounds > most_rounds || !warm_again(walk, pause, cold_time)) {
                pause.end = HeatEnd::window_not_held;
                return pause;
            }
            has_waited = false;
            continue;
        }
        if (has_waited || over_limit(walk, depth) <= 0)
            break;
        if (!wait(walk, pause, depth)) {
            pause.end = settings_.heater_stays ? HeatEnd::window_not_held : HeatEnd::never_cools;
            return pause;
        }
        has_waited = true; // it ends at the maximum less its margin
    }
    pause.start_spot = settings_.by_stitches ? mean_boss(walk.mesh(), walk.field()) : spot(walk, depth);
    pause.band = bore_at(walk.mesh(), walk.field(), depth);
    return pause;
}

} // namespace ringfill
