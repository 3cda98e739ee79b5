#pragma once

#include <functional>
#include <utility>
#include <vector>

#include <ringfill/heat/boss_readings.hpp>

namespace ringfill {

/// Tells the power of the heater [W] for the next step, by the field as it stands.
using HeaterControl = std::function<double(const BossField&)>;

/// The mean of a boss [K] at some seconds.
using BossTrace = std::vector<std::pair<double, double>>;

/// A crossing is met within this [K].
inline constexpr double met_within_K = 1e-3;

/// A boss on its way through time, by steps that the rules of section 9 set: 2 s after each change of arc,
/// heater or wrap, then each twice as long as the one before, at most 12 K in any cell of the boss while no
/// arc burns, at most 30 s while it is heated; what is left under 0.3 of a step joins it.
class BossWalk {
  public:
    /// From the temperature of the air, at time 0. @param equation outlives the walk and its copies.
    explicit BossWalk(BossEquation& equation) : equation_(&equation), field_(equation.at_ambient()) {}

    const BossEquation& equation() const { return *equation_; }
    const BossMesh& mesh() const { return equation_->mesh(); }
    const BossField& field() const { return field_; }
    const BossLoad& load() const { return load_; }
    double seconds() const { return seconds_; }           ///< since the begin
    double heater_heat() const { return heater_heat_; }   ///< put in since then [J]
    double heated_until() const { return heated_until_; } ///< the heater's last second
    double heater_time() const { return heater_time_; }   ///< with the heater on, since then [s]
    double arc_heat() const { return arc_heat_; }         ///< [J]

    /// What works from now on. Another band alone is no change: the arc of a helix goes on.
    void put(const BossLoad& load);

    /// The heater by a rule that is asked before each step; nothing: as the load says.
    /// @param longest_step [s] while the rule holds.
    void control(HeaterControl heater, double longest_step);

    void advance(double seconds);

    /// Goes on until a distance that is negative now is 0 or more; its last step is repeated so that it ends
    /// there. Nothing is done where it is so already. Whether it came there within the time.
    bool advance_to(const std::function<double(const BossField&)>& distance, double most_seconds);

    /// One step by the rules, at most so long; its length.
    double step(double most_seconds);

    /// One step of just this length.
    void step_by(double seconds);

    /// Time in which the heater warms something else, the boss staying as it is [s, J].
    void warm_aside(double seconds, double heat) {
        seconds_ += seconds;
        heater_heat_ += heat;
    }

    /// Notes the mean of the boss about once a minute from now on; nothing: no longer.
    void trace(BossTrace* points) { trace_ = points; }

  private:
    double next_length(double left);
    void take_step(double length);
    void ask_heater();
    void repeat_to_crossing(const BossWalk& before, const std::function<double(const BossField&)>& distance,
                            double at_begin, double at_end, double length);

    BossEquation* equation_;
    BossField field_;
    BossLoad load_;
    HeaterControl heater_;
    BossTrace* trace_ = nullptr;
    double longest_step_ = 0;
    double length_ = 0; ///< of the last step by the rules; 0 after a change
    double fastest_ = 0;
    double seconds_ = 0;
    double heater_heat_ = 0;
    double heated_until_ = 0;
    double heater_time_ = 0;
    double arc_heat_ = 0;
};

} // namespace ringfill
