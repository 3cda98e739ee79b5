#include <catch2/catch.hpp>

#include <cstdlib>
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

/// Energy that goes in up to the last ring is kept or lost, to 0.1 %; as far as the run goes where it breaks
/// off.
bool closes(const HeatRun& run) {
    return within((run.warm_up_heat + run.arc_heat + run.reheat_heat).value(), run.stored.value(),
                  run.lost.value());
}

/// No ring begins sooner than its least pause after the one before it, none where the start is too hot but by
/// what a linear crossing leaves.
bool begins_inside(const BossRun& one) {
    for (std::size_t ring = 1; ring < one.run.arcs.size(); ++ring)
        if (one.run.arcs[ring].first < one.run.arcs[ring - 1].second + 0.999 * one.settings.step_over)
            return false;
    return one.run.hottest_start <= one.settings.ambient ||
           one.run.hottest_start.value() <= one.settings.maximum.value() - start_margin_K + 0.6;
}

/// How many jobs; by hand 10,000.
int jobs_to_run() {
    const char* asked = std::getenv("RINGFILL_BALANCE_JOBS");
    return asked ? std::atoi(asked) : 400;
}

} // namespace

TEST_CASE("every run ends, its energy balance closes and rings begin inside the limits in random jobs") {
    Draw draw;
    int followed = 0;
    for (int i = 0; i < jobs_to_run(); ++i) {
        const BalanceJob job = draw.job();
        INFO(job.text());
        const Plan plan = job.plan();
        const auto& balance = plan.bores.front().heat_balance;
        CHECK(balance.has_value() == plan.bores.front().no_balance.empty());
        if (!balance)
            continue;
        for (const BossRun* one : {&balance->hot, &balance->cold()}) {
            REQUIRE(begins_inside(*one));
            if (one->run.steps.empty())
                continue; // it never comes to the first ring
            ++followed;
            REQUIRE(closes(one->run));
        }
    }
    CHECK(followed > jobs_to_run());
}
