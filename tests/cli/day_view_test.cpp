#include <catch2/catch.hpp>

#include "run_program.hpp"

using namespace ringfill::testing;
using Catch::Contains;

namespace {

const std::string demo = std::string(RINGFILL_ROOT) + "/cli/demo/dredger-pivots.json";

} // namespace

TEST_CASE("day tells the work by the clock, day after day, and whether taking turns saves") {
    const Workspace workspace;
    const Outcome outcome = run(workspace, {.words = {"day", demo}});
    CHECK(outcome.status == 0);
    CHECK_THAT(outcome.out, Contains("DAY 1\n  07:00 unload and make the place safe (45 min)\n"
                                     "  07:45 set up and align the bar (1 h 30 min)\n"));
    CHECK_THAT(outcome.out, Contains("\nDAY 2\n  07:00 "));
    CHECK_THAT(outcome.out, Contains("\nBores of a line take turns; one after the other it is done day "));
    CHECK_THAT(outcome.out, Contains("Come back for the crack test 48 h 00 min after that, on day "));
    CHECK_THAT(outcome.out, Contains("Standing times are common practice and differ by crew"));
}

// C45 is held and cools at a rate after its last ring, so the bar waits for it; this steel does not.
TEST_CASE("day tells what taking turns saves where metal may cool alone") {
    const Workspace workspace;
    std::string job = content_of(demo);
    const std::string hardens = "steel/C45";
    job.replace(job.find(hardens), hardens.size(), "steel/S355J2");
    workspace.write("job.json", job);
    CHECK_THAT(run(workspace, {.words = {"day", "job.json"}}).out,
               Contains("Bores of a line take turns; one after the other it is done day "));
}

TEST_CASE("heat and passes tell when by the clock") {
    const Workspace workspace;
    for (const char* view : {"heat", "passes"})
        CHECK_THAT(run(workspace, {.words = {view, demo}}).out,
                   Contains("By the clock, arm root 1: torch on day 1 "));
}

TEST_CASE("day has no comma-separated view, and says so") {
    const Workspace workspace;
    const Outcome outcome = run(workspace, {.words = {"day", demo, "--csv"}});
    CHECK(outcome.status == 2);
    CHECK_THAT(outcome.err, Contains("\"--csv\" is not an option of day"));
}
