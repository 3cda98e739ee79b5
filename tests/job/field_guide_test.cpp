#include <catch2/catch.hpp>

#include <ringfill/job/format.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

TEST_CASE(
    "the guide tells a field's meaning, kind, range, whether it is required, and what it falls back to") {
    const std::string guide = field_guide();
    CHECK_THAT(
        guide,
        Contains("\nbores[].skim\n"
                 "    clean-up cut before welding, per side, past the deepest wear; \"none\" welds on the "
                 "surface as it is.\n"
                 "    a length such as \"90.4 mm\" or \"3-9/16 in\", or none; from 0 mm to 10000 mm; 0.5 mm "
                 "when left out [practice].\n"));
    CHECK_THAT(guide, Contains("\nprocedures.NAME.travel\n"
                               "    travel speed at the weld surface.\n"
                               "    a speed such as \"350 mm/min\" or \"14 in/min\"; from 1 mm/min to 600000 "
                               "mm/min; required.\n"));
    CHECK_THAT(
        guide,
        Contains("\nsite.ambient\n"
                 "    temperature of the air and the cold machine.\n"
                 "    a temperature such as \"180 degC\" or \"350 degF\"; from -60 degC to 60 degC.\n"));
    CHECK_THAT(guide, Contains("\nbores[].worn.stations[].radii\n") &&
                          Contains("    a list of 3 to 360; each a length"));
    CHECK_THAT(guide, Contains("    names of your choosing; each an object in braces; required.\n"));
}

TEST_CASE("the guide begins with how to read it") {
    CHECK(field_guide().starts_with(
        "Fields of a ringfill-job/1 file (JSON; comments and trailing commas are allowed).\n"
        "A quantity is a text with its unit; a bare number is a length in the job's units."
        "\n\nformat\n"));
}

TEST_CASE("the starter job is read and planned in both unit systems") {
    const Job metric = job_from(starter_job(UnitSystem::metric));
    CHECK(metric.units == UnitSystem::metric);
    CHECK(metric.bores.size() == 1);
    CHECK_NOTHROW(plan(metric, shop()));
    const Job inch = job_from(starter_job(UnitSystem::inch));
    CHECK(inch.units == UnitSystem::inch);
    CHECK_NOTHROW(plan(inch, shop()));
}

TEST_CASE("the starter job explains itself before it begins") {
    CHECK(starter_job(UnitSystem::metric)
              .starts_with(
                  "// A job for ringfill. Change what differs from your bores; a line that begins with // is "
                  "only shown:\n"));
}
