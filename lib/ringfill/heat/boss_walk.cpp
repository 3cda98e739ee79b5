#include <ringfill/heat/boss_walk.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace ringfill {
namespace {

// Of the rules of section 9 [own choice, tried against a three-dimensional reference].
constexpr double after_change_s = 2;
constexpr double most_K_a_step = 12;
constexpr double while_heating_s = 30;
constexpr double joins_under = 0.3;

constexpr int most_repeats = 30;

constexpr double traced_each_s = 60;

} // namespace

void BossWalk::put(const BossLoad& load) {
    BossLoad there = load;
    there.band = load_.band;
    if (!(there == load_))
        length_ = 0;
    load_ = load;
}

void BossWalk::control(HeaterControl heater, double longest_step) {
    heater_ = std::move(heater);
    longest_step_ = longest_step;
}

void BossWalk::ask_heater() {
    if (!heater_)
        return;
    const double power = heater_(field_);
    if ((power > 0) != (load_.heater > 0))
        length_ = 0;
    load_.heater = power;
}

double BossWalk::next_length(double left) {
    double length = after_change_s;
    if (length_ > 0) {
        length = 2 * length_;
        if (load_.arc == 0 && fastest_ > 0)
            length = std::min(length, most_K_a_step / fastest_);
    }
    if (load_.heater > 0)
        length = std::min(length, while_heating_s);
    if (heater_)
        length = std::min(length, longest_step_);
    length_ = length;
    return left - length < joins_under * length ? left : length;
}

void BossWalk::take_step(double length) {
    equation_->step(field_, load_, length);
    fastest_ = equation_->fastest();
    seconds_ += length;
    heater_heat_ += load_.heater * length;
    if (load_.heater > 0) {
        heated_until_ = seconds_;
        heater_time_ += length;
    }
    arc_heat_ += load_.arc * length;
    if (!trace_)
        return;
    while (!trace_->empty() && trace_->back().first > seconds_) // a step that was repeated
        trace_->pop_back();
    if (trace_->empty() || seconds_ - trace_->back().first >= traced_each_s)
        trace_->emplace_back(seconds_, mean_boss(mesh(), field_));
}

void BossWalk::step_by(double seconds) {
    ask_heater();
    take_step(seconds);
}

double BossWalk::step(double most_seconds) {
    ask_heater();
    const double length = next_length(most_seconds);
    take_step(length);
    return length;
}

void BossWalk::advance(double seconds) {
    for (double left = seconds; left > 0;)
        left -= step(left);
}

bool BossWalk::advance_to(const std::function<double(const BossField&)>& distance, double most_seconds) {
    double here = distance(field_);
    for (double left = most_seconds; here < 0;) {
        if (!(left > 0))
            return false;
        const BossWalk before = *this;
        const double length = step(left);
        left -= length;
        const double there = distance(field_);
        if (there > met_within_K)
            repeat_to_crossing(before, distance, here, there, length);
        here = there;
    }
    return true;
}

/// Regula falsi between a step's begin and its end, which lies beyond the crossing; an end that is kept
/// counts half each further time (Illinois).
void BossWalk::repeat_to_crossing(const BossWalk& before,
                                  const std::function<double(const BossField&)>& distance, double at_begin,
                                  double at_end, double length) {
    double low = 0;
    double high = length;
    const BossLoad load = load_;
    const double by_rules = length_;
    for (int i = 0; i < most_repeats; ++i) {
        const double middle = low - at_begin * (high - low) / (at_end - at_begin);
        *this = before;
        load_ = load;
        length_ = by_rules;
        take_step(middle);
        const double there = distance(field_);
        if (std::abs(there) <= met_within_K)
            return;
        if (there < 0) {
            low = middle;
            at_begin = there;
            at_end /= 2;
        } else {
            high = middle;
            at_end = there;
            at_begin /= 2;
        }
    }
}

} // namespace ringfill
