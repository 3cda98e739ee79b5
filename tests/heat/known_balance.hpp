#pragma once

#include <optional>
#include <vector>

#include <catch2/catch.hpp>

#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/material/registry.hpp>

#include "heat/heat_balance_sample.hpp"

namespace ringfill::testing {

/// What a balance is worked out from, each part of it to be taken away or changed.
struct Known {
    WornBore bore;
    Build build;
    Base base;
    BoreHeat heat;
    std::vector<RingPass> passes;
    std::optional<HeatSource> heater;
    Temperature ambient = celsius(4);
    Length pitch = millimetres(4.3);
    Time step_over = in_si<Time>(12);
    Time peening = in_si<Time>(15);
    Time cleaning = in_si<Time>(240);
    Length blanket = millimetres(25);

    FollowedHeat follow() const {
        const BalanceCase all{bore,        build,       base,  heat,      passes,  ambient,  heater,
                              celsius(60), celsius(40), pitch, step_over, peening, cleaning, blanket};
        return follow_heat({all}).front();
    }
};

/// All that the job of the sample gives.
inline Known all_known() {
    const Job job = job_from(BalanceJob().text());
    const Plan plan = ringfill::plan(job, shop());
    const BorePlan& bore = plan.bores.front();
    std::vector<Fault> faults;
    const Base* base = find_base(shop().registry, job.bores.front().base, "", faults);
    REQUIRE(base);
    REQUIRE(bore.heat_balance);
    return {
        job.bores.front(),        bore.build, *base, bore.heat, rings_by_hand(bore, job.bores.front().length),
        bore.heat_balance->heater};
}

} // namespace ringfill::testing
