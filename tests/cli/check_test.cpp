#include <catch2/catch.hpp>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/job/format.hpp>

#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("a good job is said to be good in one line, with the size of each bore") {
    const Workspace workspace;
    workspace.write("job.json", starter_job(UnitSystem::metric));
    const Outcome outcome = run(workspace, {.words = {"check", "job.json"}});
    CHECK(outcome.status == 0);
    CHECK(outcome.err.empty());
    const Document plan =
        parse("plan", run(workspace, {.words = {"take", "job.json", "--json"}}).out, Origin::job);
    const auto count = [&](const char* list) { return plan.root.find(list)->list()->size(); };
    const Document job = parse("job.json", workspace.read("job.json"), Origin::job);
    const std::string sizes = outcome.out.substr(outcome.out.find('\n') + 1);
    for (const Value& bore : *job.root.find("bores")->list())
        CHECK(sizes.find(*bore.find("name")->text() + ": finish ") != std::string::npos);
    CHECK(outcome.out == fmt::format("job.json: can be planned: bores {}, doubts 0, cautions {}, notes {}\n",
                                     count("bores"), count("cautions"), count("notes")) +
                             sizes);
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
