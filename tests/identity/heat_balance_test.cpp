#include <catch2/catch.hpp>

#include <random>

#include "heat/heat_balance_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

class Draw {
  public:
    double between(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random_);
    }
    BalanceJob job() {
        BalanceJob made;
        made.length = std::exp(between(std::log(5), std::log(300)));
        made.worn = between(45, 200);
        made.boss = made.worn + between(30, 250);
        made.ambient = between(-30, 45);
        made.minimum = between(20, 300);
        made.maximum = made.minimum + between(15.1, 150); // a narrower window is closed
        made.heater_kW = between(2, 100);
        const double sink = between(0, 3);
        made.sink = sink < 1   ? std::string()
                    : sink < 2 ? fmt::format("\"carry_off\": \"{} W/K\",", between(0.1, 10))
                               : fmt::format("\"attached\": [ {{ \"thickness\": {} }} ],", between(5, 50));
        return made;
    }

  private:
    std::mt19937_64 random_{12};
};

bool within(double in, double kept, double lost) {
    return std::fabs(in - kept - lost) <= 1e-3 * std::max({in, std::fabs(kept), std::fabs(lost)});
}

/// Energy that goes in while welding, stops and reheats included, is kept or lost, to 0.1 %; as far as the
/// run goes where it breaks off.
bool closes(const BossRun& one) {
    const HeatRun& run = one.run;
    return within((run.arc_heat + run.reheat_heat).value(),
                  heat_content(one.settings.boss, run.welding_begins, run.welding_ends).value(),
                  run.lost.value());
}

/// Likewise of the warm-up, which takes what stands on the boss along.
bool warm_up_closes(const BossRun& one) {
    ThermalLump all = one.settings.boss;
    all.mass = one.settings.heated;
    return within(one.run.warm_up_heat.value(),
                  heat_content(all, one.settings.boss.ambient, one.run.welding_begins).value(),
                  one.run.lost_warming.value());
}

/// Every point of the curve at which a ring begins lies between the limits.
bool begins_inside(const BossRun& one) {
    std::size_t point = 0;
    double begin = 0;
    for (const HeatStep& step : one.run.steps) {
        const double end = begin + step.time.value();
        for (; point < one.run.curve.size() && one.run.curve[point].time.value() < end - 1e-7; ++point) {
            const double t = one.run.curve[point].temperature.value();
            const bool rings =
                step.stage == HeatStage::weld && one.run.curve[point].time.value() > begin - 1e-7;
            if (rings && (t > one.settings.maximum.value() + 1e-5 || t < one.settings.minimum.value() - 1e-5))
                return false;
        }
        begin = end;
    }
    return true;
}

} // namespace

TEST_CASE("the energy balance closes and rings begin inside the limits in 10,000 random jobs") {
    Draw draw;
    int followed = 0;
    for (int i = 0; i < 10'000; ++i) {
        const BalanceJob job = draw.job();
        INFO(job.text());
        const Plan plan = job.plan();
        const HeatBalance& balance = plan.bores.front().heat_balance.value();
        for (const BossRun* one : {&balance.hot, &balance.cold()}) {
            REQUIRE(begins_inside(*one));
            if (one->run.end == HeatEnd::heater_too_small && one->run.steps.empty())
                continue; // it never comes to the first ring
            ++followed;
            REQUIRE(closes(*one));
            REQUIRE(warm_up_closes(*one));
        }
    }
    CHECK(followed > 15'000);
}
