#include <catch2/catch.hpp>

#include <filesystem>

#include "cli/run_program.hpp"

using namespace ringfill::testing;

namespace {

namespace fs = std::filesystem;

const std::string clear_line = "\r\033[K";

/// A folder with a plugin that keeps its first question waiting for 0.9 s, and a job of two bores of its
/// metal.
void lay_out(const Workspace& workspace) {
    fs::create_directory(workspace.folder() / "mine");
    fs::copy_file(fs::path(RINGFILL_BAD_PLUGINS) / "slow.family", workspace.folder() / "mine/slow.family");
    const std::string bore = R"("base": "bad/B1", "finish_diameter": "90 mm", "length": "100 mm",
        "boss_diameter": "180 mm", "worn": { "diameter": "93.4 mm" } })";
    workspace.write("job.json",
                    R"({ "format": "ringfill-job/1", "title": "t", "units": "mm", "procedures": { "main": {
        "filler": "steel/ER70S-6", "wire": "1 mm", "gas": "M21", "wire_feed": "8 m/min", "current": "180 A",
        "voltage": "19 V", "travel": "350 mm/min" } }, "bores": [{ "name": "one", )" +
                        bore + R"(, { "name": "two", )" + bore + "] }");
}

} // namespace

TEST_CASE("long work tells on a terminal how far it is, on one line that is gone at the end") {
    const Workspace workspace;
    lay_out(workspace);
    const Outcome outcome = run_on_terminal(
        workspace, {.words = {"take", "job.json", "--plugins", "mine"}, .environment = {{"TERM", "xterm"}}});
    CHECK(outcome.status == 0);
    const std::size_t told = outcome.out.find(clear_line + "planning bore 2 of 2");
    REQUIRE(told != std::string::npos);
    const std::size_t cleared = outcome.out.rfind(clear_line);
    CHECK(cleared > told);
    CHECK(outcome.out.find("TAKE") > cleared);
}

TEST_CASE("nothing is told where no terminal is, on a plain one, or of short work") {
    const Workspace workspace;
    lay_out(workspace);
    const Outcome apart = run(workspace, {.words = {"take", "job.json", "--plugins", "mine"}});
    CHECK(apart.status == 0);
    CHECK(apart.err.empty());
    const Outcome plain = run_on_terminal(
        workspace, {.words = {"take", "job.json", "--plugins", "mine"}, .environment = {{"TERM", "dumb"}}});
    CHECK(plain.out.find("planning bore") == std::string::npos);
    const Outcome usual =
        run_on_terminal(workspace, {.words = {"materials"}, .environment = {{"TERM", "xterm"}}});
    CHECK(usual.out.find(clear_line) == std::string::npos);
}

TEST_CASE("the trial of a plugin tells which rule it is at") {
    const Workspace workspace;
    lay_out(workspace);
    const Outcome outcome = run_on_terminal(workspace, {.words = {"materials", "--check", "mine/slow.family"},
                                                        .environment = {{"TERM", "xterm"}}});
    CHECK(outcome.out.find(clear_line + "trying: ") != std::string::npos);
}
