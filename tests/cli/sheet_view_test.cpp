#include <catch2/catch.hpp>

#include "run_program.hpp"

using namespace ringfill::testing;
using Catch::Contains;

namespace {

const std::string demo = std::string(RINGFILL_ROOT) + "/cli/demo/dredger-pivots.json";

} // namespace

TEST_CASE("sheet writes the same page to a file, to standard output and from standard input") {
    const Workspace workspace;
    const Outcome printed = run(workspace, {.words = {"sheet", demo}});
    CHECK(printed.status == 0);
    CHECK(printed.err.empty());
    CHECK_THAT(printed.out, Catch::StartsWith("<!DOCTYPE html>\n") && Catch::EndsWith("</html>\n"));

    const Outcome filed = run(workspace, {.words = {"sheet", demo, "-o", "page.html"}});
    CHECK(filed.status == 0);
    CHECK(filed.out.empty());
    CHECK(workspace.read("page.html") == printed.out);
    CHECK(workspace.names() == std::vector<std::string>{"page.html"});

    const Outcome piped = run(workspace, {.words = {"sheet", "-"}, .input = content_of(demo)});
    CHECK(piped.out == printed.out);
}

TEST_CASE("sheet shows the units asked for") {
    const Workspace workspace;
    const std::string inches = run(workspace, {.words = {"sheet", demo, "--units", "inch"}}).out;
    CHECK_THAT(inches, Contains(">500 °F<") || Contains("at least 500 °F"));
    CHECK_THAT(inches, Contains("data-figure=\"bores[0].build.skim_diameter_mm\">3.748 in<"));
}

TEST_CASE("sheet has no view of numbers, and says so") {
    const Workspace workspace;
    for (const std::string option : {"--csv", "--json"}) {
        const Outcome outcome = run(workspace, {.words = {"sheet", demo, option}});
        CHECK(outcome.status == 2);
        CHECK(outcome.out.empty());
        CHECK_THAT(outcome.err, Contains("\"" + option + "\" is not an option of sheet"));
    }
}

TEST_CASE("a sheet that cannot be planned is not written") {
    const Workspace workspace;
    workspace.write("job.json", "{}");
    const Outcome outcome = run(workspace, {.words = {"sheet", "job.json", "-o", "page.html"}});
    CHECK(outcome.status == 1);
    CHECK(workspace.names() == std::vector<std::string>{"job.json"});
}
