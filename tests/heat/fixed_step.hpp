#pragma once

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include <ringfill/heat/ring_times.hpp>

namespace ringfill::testing {

/// A boss as plain numbers in SI, temperatures in kelvin; nothing here comes from the library.
struct SteppedBoss {
    double mass = 0;
    double heated = 0;
    double conductance = 0; ///< h A + G
    double emitting = 0;    ///< ε A
    double ambient = 0;
    double minimum = 0;
    double maximum = 0;
    double arc = 0;
    double heater = 0;
};

struct SteppedRun {
    std::string end = "done";
    int stops = 0;
    int reheats = 0;
    double warm_up = 0;
    double waited = 0;
    double reheated = 0;
    double peak = 0;
    double welded = 0;  ///< temperature after the last ring
    double cooling = 0; ///< from there to 30 °C; negative: never
};

/// Specific heat of carbon steel by EN 1993-1-2:2005, 3.4.1.2, written here once more, up to 600 °C.
inline double stepped_c(double kelvin) {
    const double t = std::max(kelvin - 273.15, 20.0);
    return 425 + 0.773 * t - 1.69e-3 * t * t + 2.22e-6 * t * t * t;
}

/// Walks through a bore by fixed steps of time, apart from the library.
class FixedStep {
  public:
    FixedStep(const SteppedBoss& boss, double step) : boss_(boss), dt_(step), t_(boss.ambient) {}

    SteppedRun walk(const std::vector<RingPass>& passes) {
        run_.peak = t_;
        if (!until(boss_.heated, boss_.heater, boss_.minimum, run_.warm_up))
            return broken("heater");
        for (const RingPass& pass : passes)
            for (const Time& ring : pass.rings) {
                if (t_ > boss_.maximum + slack) {
                    ++run_.stops;
                    if (!until(boss_.mass, 0, std::max(boss_.minimum, boss_.maximum - 50), run_.waited))
                        return broken("never cools");
                } else if (t_ < boss_.minimum - slack) {
                    ++run_.reheats;
                    if (!until(boss_.mass, boss_.heater, std::min(boss_.maximum, boss_.minimum + 25),
                               run_.reheated))
                        return broken("heater");
                }
                lay(ring.value());
            }
        run_.welded = t_;
        if (!until(boss_.mass, 0, 303.15, run_.cooling))
            run_.cooling = -1;
        return run_;
    }

  private:
    /// A limit met by steps is met to a step.
    static constexpr double slack = 0.02;

    double slope(double mass, double power) const {
        const double a = boss_.ambient;
        const double loss = boss_.conductance * (t_ - a) +
                            boss_.emitting * 5.670374419e-8 * (t_ * t_ * t_ * t_ - a * a * a * a);
        return (power - loss) / (mass * stepped_c(t_));
    }

    /// The time to a temperature is added up; false when it does not come nearer.
    bool until(double mass, double power, double goal, double& time) {
        const bool up = t_ < goal;
        if (!up && power > 0)
            return true; // warm enough already
        while (up ? t_ < goal : t_ > goal) {
            const double way = slope(mass, power) * dt_;
            if (up ? way < 1e-9 : way > -1e-9)
                return false;
            t_ += way;
            time += dt_;
        }
        run_.peak = std::max(run_.peak, t_);
        return true;
    }

    void lay(double seconds) {
        double left = seconds;
        for (; left > dt_; left -= dt_)
            t_ += slope(boss_.mass, boss_.arc) * dt_;
        t_ += slope(boss_.mass, boss_.arc) * left;
        run_.peak = std::max(run_.peak, t_);
    }

    SteppedRun broken(const char* why) {
        run_.end = why;
        return run_;
    }

    SteppedBoss boss_;
    double dt_;
    double t_;
    SteppedRun run_;
};

} // namespace ringfill::testing
