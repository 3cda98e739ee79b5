#include <catch2/catch.hpp>

#include <algorithm>

#include <ringfill/document/parse.hpp>

#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

const std::string winch = std::string(RINGFILL_ROOT) + "/cli/demo/barge-winch-frame.json";

} // namespace

TEST_CASE("boring tells cuts in the sequence of the work, size, gauge readings, time and edges") {
    const Workspace workspace;
    const Outcome outcome = run(workspace, {.words = {"boring", winch}});
    CHECK(outcome.status == 0);
    CHECK(outcome.err.empty());
    std::size_t last = 0;
    for (const char* step : {"skim, before the weld", "first, under the skin", "semi-finish", "finish  ",
                             "spring pass", "face 1 × "}) {
        INFO(step);
        const std::size_t here = outcome.out.find(step);
        REQUIRE(here != std::string::npos);
        CHECK(here > last);
        last = here;
    }
    CHECK_THAT(outcome.out, Contains("size at 20 °C: 120.000 mm to 120.054 mm (H8)."));
    CHECK_THAT(outcome.out, Contains("the gauge must read 120.015 mm to 120.068 mm at 30 °C"));
    CHECK_THAT(outcome.out, Contains("rough, 1 finish."));
    CHECK_THAT(outcome.out, Contains("Rough under 60 °C; finish and measure under 30 °C"));
}

TEST_CASE("boring as comma-separated values has a line for each cut, facing and standing time") {
    const Workspace workspace;
    const Outcome table = run(workspace, {.words = {"boring", winch, "--csv"}});
    CHECK(table.status == 0);
    CHECK(table.out.starts_with("bore,count,step,pieces,depth_mm,from_diameter_mm,to_diameter_mm,rpm,feed_mm,"
                                "time_s,deposit,tool\r\ndrum side,1,skim,1,"));
    const Document plan =
        parse("plan", run(workspace, {.words = {"boring", winch, "--json"}}).out, Origin::job);
    const Value& boring = *plan.root.find("bores")->list()->front().find("boring");
    const std::size_t lines = boring.find("cuts")->list()->size() + boring.find("facing")->list()->size() +
                              boring.find("standing")->list()->size();
    CHECK(static_cast<std::size_t>(std::count(table.out.begin(), table.out.end(), '\n')) == lines + 1);
}

TEST_CASE("boring explains itself with an example") {
    const Workspace workspace;
    const Outcome help = run(workspace, {.words = {"boring", "--help"}});
    CHECK(help.status == 0);
    CHECK_THAT(help.out, Contains("Usage: ringfill boring [OPTIONS] JOB\n"));
    CHECK_THAT(help.out, Contains("Example: ringfill boring job.json --csv -o cuts.csv\n"));
    CHECK_THAT(run(workspace, {.words = {"--help"}}).out, Contains("  boring  "));
}
