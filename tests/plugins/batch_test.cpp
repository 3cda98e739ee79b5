#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>

#include <fmt/format.h>

#include "cli/run_program.hpp"

using namespace ringfill::testing;
using Catch::Contains;

namespace {

namespace fs = std::filesystem;

void lay_plugin(const Workspace& workspace, const std::string& name) {
    fs::create_directory(workspace.folder() / "mine");
    fs::copy_file(fs::path(RINGFILL_BAD_PLUGINS) / (name + ".family"),
                  workspace.folder() / "mine" / (name + ".family"));
}

std::string job_on(const std::string& base) {
    return fmt::format(
        R"({{"format":"ringfill-job/1","title":"t","units":"mm","procedures":{{"main":{{"filler":"steel/ER70S-6",)"
        R"("wire":"1 mm","gas":"M21","wire_feed":"8 m/min","current":"180 A","voltage":"19 V",)"
        R"("travel":"350 mm/min"}}}},"bores":[{{"name":"one","base":"{}","finish_diameter":"90 mm",)"
        R"("length":"100 mm","boss_diameter":"180 mm","worn":{{"diameter":"93.4 mm"}}}}]}})"
        "\n",
        base);
}

} // namespace

TEST_CASE("a plugin that answers wrongly spoils the lines of its metal, and the status says so") {
    const Workspace workspace;
    lay_plugin(workspace, "not_a_number");
    workspace.write("jobs.jsonl", job_on("steel/C45") + job_on("bad/B1") + job_on("steel/C45"));
    const Outcome outcome = run(workspace, {.words = {"batch", "jobs.jsonl", "--plugins", "mine"}});
    CHECK(outcome.status == 3);
    const std::size_t second = outcome.out.find('\n') + 1;
    const std::size_t third = outcome.out.find('\n', second) + 1;
    CHECK(outcome.out.starts_with(R"({"format":"ringfill-plan/1")"));
    CHECK(outcome.out.substr(second).starts_with(
        R"({"format":"ringfill-fault/1","line":2,"origin":"table","faults":[{)"));
    CHECK(outcome.out.substr(third) == outcome.out.substr(0, second));
    CHECK_THAT(outcome.err, Contains("ringfill: 1 of 3 lines cannot be planned; the first: ") &&
                                Contains("not_a_number.family"));
}

TEST_CASE("a plugin is never asked by two lines at once") {
    const Workspace workspace;
    lay_plugin(workspace, "alone");
    std::string jobs;
    for (int i = 0; i < 60; ++i)
        jobs += job_on("bad/B1");
    workspace.write("jobs.jsonl", jobs);
    const Outcome outcome = run(workspace, {.words = {"batch", "jobs.jsonl", "--plugins", "mine"}});
    CHECK(outcome.status == 0);
    CHECK(std::count(outcome.out.begin(), outcome.out.end(), '\n') == 60);
}

TEST_CASE("on a terminal batch tells how many lines are answered") {
    const Workspace workspace;
    lay_plugin(workspace, "slow"); // its first question takes 0.9 s
    workspace.write("jobs.jsonl", job_on("bad/B1") + job_on("bad/B1") + job_on("bad/B1"));
    const Outcome outcome = run_on_terminal(
        workspace, {.words = {"batch", "jobs.jsonl", "--plugins", "mine", "-o", "plans.jsonl"},
                    .environment = {{"TERM", "xterm"}}});
    CHECK(outcome.status == 0);
    CHECK_THAT(outcome.out, Contains("\r\033[Klines answered 1"));
    CHECK(outcome.out.ends_with("\r\033[K"));
}
