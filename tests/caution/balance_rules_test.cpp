#include <catch2/catch.hpp>

#include "caution/told.hpp"
#include "heat/heat_balance_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Lines told_of(const BalanceJob& job, UnitSystem units = UnitSystem::metric) {
    const Job read = job_from(job.text());
    const Plan plan = ringfill::plan(read, shop());
    REQUIRE(plan.bores.front().heat_balance);
    return told_by(balance_rules, read.bores.front(), plan.bores.front(), units);
}

} // namespace

TEST_CASE("a balance that ends well warns of nothing") {
    CHECK(told_of({}).empty());
}

// By hand: 2 kW at 25 % are 500 W; a surface of 0.1231 m² at 180 °C in air of 4 °C loses 217 W by 10 W/m²K,
// 203 W by an emissivity of 0.8 and 352 W by 2 W/K, together 771 W.
TEST_CASE("a heater that is too small is told with the power needed and the power given") {
    BalanceJob weak;
    weak.heater_kW = 2;
    CHECK(told_of(weak) ==
          Lines{"eye | before | yes | Bring a larger heater or shelter the boss: this one does not bring it "
                "to 180 °C. Its fuel is left out of what to take, stops are counted as far as it goes. | 2 "
                "kW are given off, and more than 3.1 kW are needed, at 25 % into the metal | own"});
    weak.sink = "";
    CHECK(told_of(weak, UnitSystem::inch).front().find("with a plate of 1.685 in on the boss") !=
          std::string::npos);
}

TEST_CASE("air too warm for a stop, for roughing and for finishing is told") {
    BalanceJob hot;
    hot.ambient = 305;
    CHECK(told_of(hot) ==
          Lines{"eye | before | yes | Cool the air round the boss, or wait for a colder day: it does not "
                "come down to 300 °C, where the work may go on. Its fuel is left out of what to take, stops "
                "are counted as far as it goes. | the air is at 305 °C, or ten days are not enough | own"});
    hot.ambient = 40;
    CHECK(told_of(hot) == Lines{"eye | after | yes | Correct the finish diameter for the temperature, or "
                                "finish and measure on a colder day: the boss does not cool to 30 °C. | the "
                                "air is at 40 °C, or ten days are not enough | practice"});
    hot.ambient = 70;
    CHECK(told_of(hot) == Lines{"eye | after | yes | Do not bore yet: the boss does not cool to 60 °C. | the "
                                "air is at 70 °C, or ten days are not enough | practice"});
}

TEST_CASE("a Biot number over 0.1 is a note") {
    const HeatBalance thin = BalanceJob{}.plan().bores.front().heat_balance.value();
    CHECK(balance_notes("eye", thin, UnitSystem::metric).empty());
    HeatBalance thick = thin;
    thick.biot = 0.12;
    CHECK(balance_notes("eye", thick, UnitSystem::metric) ==
          Lines{"eye: its wall is not at one temperature (Biot number 0.12 at 300 °C, over 0.1): waits and "
                "temperatures are means over the boss; measure before each ring."});
}
