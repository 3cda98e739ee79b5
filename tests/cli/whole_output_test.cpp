#include <array>
#include <csignal>
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>

#include "long_job.hpp"
#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

namespace fs = std::filesystem;

const std::string starter = starter_job(UnitSystem::metric);

/// A workspace with a good job and an old result.
struct OldResult {
    Workspace workspace;
    std::string plan; ///< what a run prints

    OldResult() {
        workspace.write("job.json", starter);
        workspace.write("out.txt", "old\n");
        plan = run(workspace, {.words = {"job.json"}}).out;
    }

    /// The old result stands as it was, and nothing new beside it.
    void check_untouched(const std::vector<std::string>& names = {"job.json", "out.txt"}) const {
        CHECK(workspace.read("out.txt") == "old\n");
        CHECK(workspace.names() == names);
    }
};

void check_failed(const Outcome& outcome, const std::string& message) {
    CHECK(outcome.status == 4);
    CHECK(outcome.out.empty());
    CHECK(outcome.err == message);
}

} // namespace

TEST_CASE("a result goes into a file whole, and nothing is printed") {
    const OldResult old;
    const Outcome outcome = run(old.workspace, {.words = {"job.json", "-o", "out.txt"}});
    CHECK(outcome.status == 0);
    CHECK(outcome.out.empty());
    CHECK(outcome.err.empty());
    CHECK(old.workspace.read("out.txt") == old.plan);
    CHECK(old.workspace.names() == std::vector<std::string>{"job.json", "out.txt"});
}

TEST_CASE("a replaced file keeps its permissions, and a link to it stays a link") {
    const OldResult old;
    fs::permissions(old.workspace.path("out.txt"), fs::perms{0640});
    fs::create_symlink("out.txt", old.workspace.path("link.txt"));
    CHECK(run(old.workspace, {.words = {"job.json", "--output", "link.txt"}}).status == 0);
    CHECK(old.workspace.read("out.txt") == old.plan);
    CHECK(fs::is_symlink(old.workspace.path("link.txt")));
    CHECK(fs::status(old.workspace.path("out.txt")).permissions() == fs::perms{0640});
}

TEST_CASE("a minus sign as the output is standard output") {
    const OldResult old;
    const Outcome outcome = run(old.workspace, {.words = {"job.json", "-o", "-"}});
    CHECK(outcome.status == 0);
    CHECK(outcome.out == old.plan);
    old.check_untouched();
}

TEST_CASE("a faulty job leaves the old result") {
    const OldResult old;
    const Outcome outcome = run(old.workspace, {.words = {"-", "-o", "out.txt"}, .input = "[]"});
    CHECK(outcome.status == 1);
    CHECK(outcome.out.empty());
    old.check_untouched();
}

TEST_CASE("a folder that is missing, is a file, or is named as the file is refused") {
    const OldResult old;
    check_failed(
        run(old.workspace, {.words = {"job.json", "-o", "none/out.txt"}}),
        "none/out.txt: cannot be written: No such file or directory; check the name and make the folder "
        "first\n");
    check_failed(
        run(old.workspace, {.words = {"job.json", "-o", "job.json/out.txt"}}),
        "job.json/out.txt: cannot be written: Not a directory; a part of the name is a file, not a folder\n");
    check_failed(run(old.workspace, {.words = {"job.json", "-o", "."}}),
                 ".: cannot be written: Is a directory; name a file, not a folder\n");
    old.check_untouched();
}

TEST_CASE("a full disk is told and the old file stays whole") {
    const OldResult old;
    check_failed(run(old.workspace, {.words = {"job.json", "-o", "/dev/full"}}),
                 "/dev/full: cannot be written: No space left on device; make room or choose another disk\n");

    const int full = ::open("/dev/full", O_WRONLY | O_CLOEXEC);
    REQUIRE(full >= 0);
    check_failed(
        run(old.workspace, {.words = {"job.json"}, .standard_output = full}),
        "standard output: cannot be written: No space left on device; make room, or write elsewhere with "
        "-o FILE\n");
    ::close(full);
    old.check_untouched();
}

TEST_CASE("a disk that fills up half-way leaves the old file and nothing beside it") {
    const OldResult old;
    REQUIRE(old.plan.size() > 600);
    // No file may grow past 600 bytes: the first write comes back short and the next one fails.
    check_failed(run(old.workspace, {.words = {"job.json", "-o", "out.txt"}, .file_limit = 600}),
                 "out.txt: cannot be written: File too large; make room or choose another disk\n");
    check_failed(run(old.workspace, {.words = {"job.json", "-o", "new.txt"}, .file_limit = 600}),
                 "new.txt: cannot be written: File too large; make room or choose another disk\n");
    old.check_untouched();
}

TEST_CASE("a folder or a file that may not be written to is refused and left alone") {
    const OldResult old;
    old.workspace.write("ringfill",
                        content_of(RINGFILL_PROGRAM)); // where the user without privileges may run it
    old.workspace.write("folder/kept.txt", "kept\n");
    fs::permissions(old.workspace.path("ringfill"), fs::perms{0755});
    fs::permissions(old.workspace.path("folder"), fs::perms{0555});
    const auto start = [&](const std::string& name) {
        return run(old.workspace, {.words = {"start", name},
                                   .program = old.workspace.path("ringfill"),
                                   .without_privileges = true});
    };
    check_failed(start("folder/new.json"),
                 "folder/new.json: cannot be written: Permission denied; choose a place that you may use\n");
    check_failed(
        start("/proc/new.json"),
        "/proc/new.json: cannot be written: No such file or directory; check the name and make the folder "
        "first\n");
    fs::permissions(old.workspace.path("folder"), fs::perms{0755});
    CHECK(old.workspace.read("folder/kept.txt") == "kept\n");
    old.check_untouched({"folder", "job.json", "out.txt", "ringfill"});
    CHECK_FALSE(fs::exists(old.workspace.path("folder/new.json")));
}

TEST_CASE("a reader that closes the pipe at once is no fault") {
    const OldResult old;
    std::array<int, 2> ends{};
    REQUIRE(::pipe2(ends.data(), O_CLOEXEC) == 0);
    ::close(ends[0]);
    const Outcome outcome = run(old.workspace, {.words = {"job.json"}, .standard_output = ends[1]});
    ::close(ends[1]);
    CHECK(outcome.status == 0);
    CHECK(outcome.err.empty());
}

TEST_CASE("a reader that closes the pipe in the middle is no fault") {
    const OldResult old;
    // Far more than a pipe holds, so that the program is still writing when its reader goes.
    old.workspace.write("long.json", long_job("Long", 60));
    REQUIRE(run(old.workspace, {.words = {"long.json", "--json"}}).out.size() > 100'000);

    std::array<int, 2> ends{};
    REQUIRE(::pipe2(ends.data(), O_CLOEXEC) == 0);
    const int nothing = ::open("/dev/null", O_RDWR | O_CLOEXEC);
    const int errors = ::open(old.workspace.path("errors.txt").c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
    const pid_t process =
        start_program(old.workspace.folder(), {.words = {"long.json", "--json"}}, nothing, ends[1], errors);
    ::close(ends[1]);
    std::array<char, 10> first{};
    CHECK(::read(ends[0], first.data(), first.size()) == 10);
    ::close(ends[0]);
    int status = -1;
    CHECK(::waitpid(process, &status, 0) == process);
    CHECK(WIFEXITED(status));
    CHECK(WEXITSTATUS(status) == 0);
    CHECK(old.workspace.read("errors.txt").empty());
    ::close(nothing);
    ::close(errors);
}
