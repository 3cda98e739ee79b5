#include <catch2/catch.hpp>

#include "run_program.hpp"

using namespace ringfill::testing;

namespace {

/// The block between the fences after some words of a page.
std::string block_after(const std::string& page, const std::string& words) {
    const std::string fence = "```text\n";
    const std::size_t begin = page.find(fence, page.find(words));
    if (begin == std::string::npos)
        return {};
    return page.substr(begin + fence.size(), page.find("```", begin + fence.size()) - begin - fence.size());
}

} // namespace

TEST_CASE("the README shows what the program prints for the sample job") {
    const Workspace workspace;
    const std::string root = RINGFILL_ROOT;
    const Outcome outcome = run(workspace, {.words = {"take", root + "/cli/demo/dredger-pivots.json"}});
    CHECK(block_after(content_of(root + "/README.md"), "bash cli/first_plan.sh") == outcome.out);
}

TEST_CASE("the README shows a fault as the program tells it") {
    const Workspace workspace;
    workspace.write("job.json", content_of(std::string(RINGFILL_ROOT) + "/tests/bad/no-unit.json"));
    const std::string told = run(workspace, {.words = {"check", "job.json"}}).err;
    const std::string shown =
        block_after(content_of(std::string(RINGFILL_ROOT) + "/README.md"), "faults to standard error");
    CHECK(!shown.empty());
    CHECK(told == shown);
}
