#include <catch2/catch.hpp>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/job/format.hpp>

#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

TEST_CASE("a good job is said to be good, with what each bore is read as") {
    const Workspace workspace;
    workspace.write("job.json", starter_job(UnitSystem::metric));
    const Outcome outcome = run(workspace, {.words = {"check", "job.json"}});
    CHECK(outcome.status == 0);
    CHECK(outcome.err.empty());
    const Document plan =
        parse("plan", run(workspace, {.words = {"take", "job.json", "--json"}}).out, Origin::job);
    const auto count = [&](const char* list) { return plan.root.find(list)->list()->size(); };
    CHECK(outcome.out == fmt::format("job.json: can be planned: bores {}, doubts 0, cautions {}, notes {}\n"
                                     "arm root: finish 90.0 mm, length 100.0 mm, boss 180.0 mm\n",
                                     count("bores"), count("cautions"), count("notes")));
}

TEST_CASE("the check as JSON has its format, the file and the counts of the plan") {
    const Workspace workspace;
    workspace.write("job.json", starter_job(UnitSystem::metric));
    const Outcome outcome = run(workspace, {.words = {"check", "job.json", "--json"}});
    CHECK(outcome.status == 0);
    CHECK(outcome.err.empty());
    const Document plan =
        parse("plan", run(workspace, {.words = {"take", "job.json", "--json"}}).out, Origin::job);
    const Document check = parse("check", outcome.out, Origin::job);
    std::vector<std::string> names;
    for (const Member& member : *check.root.object())
        names.push_back(member.name);
    CHECK(names == std::vector<std::string>{"format", "file", "plannable", "bores", "doubts", "tables",
                                            "cautions", "notes"});
    CHECK(*check.root.find("format")->text() == "ringfill-check/1");
    CHECK(*check.root.find("file")->text() == "job.json");
    CHECK(*check.root.find("plannable")->flag());
    for (const char* list : {"bores", "doubts", "tables", "cautions", "notes"})
        CHECK(*check.root.find(list)->number() == static_cast<double>(plan.root.find(list)->list()->size()));
}

TEST_CASE("a value that looks mistyped is told first, and is a fault where the check is strict") {
    const Workspace workspace;
    std::string job = starter_job(UnitSystem::metric);
    const std::string volts = R"("voltage": "19.5 V")";
    REQUIRE(job.find(volts) != std::string::npos);
    workspace.write("job.json", job.replace(job.find(volts), volts.size(), R"("voltage": "195 V")"));
    const std::string doubt =
        "procedures.main.voltage: 195 V looks mistyped: usual is 13 V to 40 V; meant 19.5 V?";
    const Outcome check = run(workspace, {.words = {"check", "job.json"}});
    CHECK(check.status == 0);
    CHECK_THAT(check.out, Contains("doubts 1") && Contains("DOUBT " + doubt));
    for (const char* view : {"take", "passes", "heat", "boring", "day", "quote", "cautions", "sheet"}) {
        INFO(view);
        const Outcome outcome = run(workspace, {.words = {view, "job.json"}});
        CHECK(outcome.status == 0);
        CHECK_THAT(outcome.out, Contains("DOUBT procedures.main.voltage: 195 V looks mistyped"));
        CHECK(outcome.out.find("DOUBT") < outcome.out.find("Preheat at least"));
        const Outcome strict = run(workspace, {.words = {view, "job.json", "--strict"}});
        CHECK(strict.status == 1);
        CHECK(strict.out.empty());
        CHECK_THAT(strict.err,
                   Contains("procedures.main.voltage: 195 V looks mistyped: usual is 13 V to 40 V; "
                            "was 19.5 V meant?"));
    }
    CHECK(run(workspace, {.words = {"check", "job.json", "--strict"}}).status == 1);
}

TEST_CASE("the check goes into a file like every result") {
    const Workspace workspace;
    workspace.write("job.json", starter_job(UnitSystem::metric));
    const Outcome printed = run(workspace, {.words = {"check", "job.json"}});
    const Outcome written = run(workspace, {.words = {"check", "job.json", "-o", "out.txt"}});
    CHECK(written.status == 0);
    CHECK(written.out.empty());
    CHECK(workspace.read("out.txt") == printed.out);
}

TEST_CASE("a job that cannot be planned is told on standard error alone, with and without JSON") {
    const Workspace workspace;
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"check", "-"}, std::vector<std::string>{"check", "-", "--json"}}) {
        const Outcome outcome = run(workspace, {.words = words, .input = "[]"});
        CHECK(outcome.status == 1);
        CHECK(outcome.out.empty());
        CHECK(outcome.err ==
              "standard input:1:1: is a list, not an object in braces; write the fields of the job in "
              "braces\n"
              "    []\n"
              "    ^\n");
    }
}
