#include <catch2/catch.hpp>

#include "document/refused.hpp"
#include "full_job.hpp"
#include "heat/heat_balance_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

namespace {

std::string refused(const std::string& plate) {
    BalanceJob job;
    job.sink = "\"attached\": [ { \"thickness\": 25, " + plate + " } ],";
    return refusal(Origin::job, [&] { job_from(job.text()); });
}

} // namespace

TEST_CASE("a plate outside the bore or without reach is refused") {
    CHECK(refused(R"("depth": 101)")
              .find("bores[0].attached[0].depth: 101 lies outside the bore; measure the "
                    "depth from the near face") != std::string::npos);
    CHECK(refused(R"("reach": 29)").find("bores[0].attached[0].reach: 29 is out of range") !=
          std::string::npos);
}

TEST_CASE("what the job says of plates, heater, blanket and pauses is read") {
    const Job job = job_from(full_job);
    const Plate& plate = job.bores.front().attached.front();
    CHECK_THAT(plate.depth->value(), WithinRel(0.0254, 1e-12));
    CHECK_THAT(plate.reach->value(), WithinRel(0.508, 1e-12));
    CHECK(plate.wrapped);
    CHECK_FALSE(job.bores.front().attached.back().depth);
    CHECK(job.heater->stays == false);
    CHECK_THAT(job.heater->skin->value(), WithinRel(573.15, 1e-12));
    CHECK(job.heater->start_delay->value() == 120);
    CHECK_THAT(job.blanket.value(), WithinRel(0.025, 1e-12));
    CHECK(job.procedures.front().step_over->value() == 12);
}
