#include <catch2/catch.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/version.hpp>

#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

const std::string exit_statuses =
    "Exit status:\n"
    "  0   planned; notes and cautions included\n"
    "  1   the job, or a line of batch, cannot be planned as written\n"
    "  2   the command line is wrong\n"
    "  3   a plugin or a table is broken\n"
    "  4   a file cannot be read or written\n"
    "  70  a fault of the program\n"
    "  130 batch was asked to end (Ctrl-C) and finished the lines it had begun\n";

Outcome helped(const std::vector<std::string>& words) {
    const Workspace workspace;
    const Outcome outcome = run(workspace, {.words = words});
    CHECK(outcome.status == 0);
    CHECK(outcome.err.empty());
    return outcome;
}

} // namespace

TEST_CASE("the version is one line") {
    CHECK(helped({"--version"}).out == "ringfill " + std::string(version) + "\n");
}

TEST_CASE("the help lists the commands and the exit statuses and gives an example") {
    const std::string help = helped({"--help"}).out;
    CHECK_THAT(help, Contains("  take  ") && Contains("  check  ") && Contains("  start  "));
    CHECK_THAT(help, Contains("Example: ringfill start job.json"));
    CHECK_THAT(help, Contains(exit_statuses));
    CHECK_THAT(help, Contains("the approved welding procedure and licensed practice"));
    CHECK(helped({"-h"}).out == help);
}

TEST_CASE("no arguments print the help") {
    CHECK(helped({}).out == helped({"--help"}).out);
}

TEST_CASE("each command explains itself with its options, an example and the exit statuses") {
    const std::string take = helped({"take", "--help"}).out;
    CHECK_THAT(take, Contains("Usage: ringfill take [OPTIONS] JOB\n"));
    for (const char* option : {"--json", "-o,--output FILE", "--units mm|inch", "--tables DIR"})
        CHECK_THAT(take, Contains(option));
    CHECK_THAT(take, Contains("Example: ringfill take job.json --units inch\n") && Contains(exit_statuses));

    const std::string check = helped({"check", "--help"}).out;
    CHECK_THAT(check, Contains("Usage: ringfill check [OPTIONS] [JOB]\n"));
    CHECK_THAT(check, Contains("Example: ringfill check job.json") && Contains(exit_statuses));

    const std::string start = helped({"start", "--help"}).out;
    CHECK_THAT(start, Contains("Usage: ringfill start [OPTIONS] [FILE]\n") && Contains("--fields"));
    CHECK_THAT(start, Contains("Example: ringfill start job.json\n") && Contains(exit_statuses));
}
