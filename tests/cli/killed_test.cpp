#include <chrono>
#include <csignal>
#include <fcntl.h>
#include <random>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

#include <catch2/catch.hpp>

#include "long_job.hpp"
#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

using Clock = std::chrono::steady_clock;

constexpr int kills = 160;
constexpr int asked_to_end = 90;

/// Runs the words and ends the program after a delay. True if it was still running then.
bool killed_after(const Workspace& workspace, const std::vector<std::string>& words,
                  std::chrono::microseconds delay, int signal = SIGKILL) {
    const int nothing = ::open("/dev/null", O_RDWR | O_CLOEXEC);
    const pid_t process = start_program(workspace.folder(), {.words = words}, nothing, nothing, nothing);
    ::close(nothing);
    std::this_thread::sleep_for(delay);
    ::kill(process, signal);
    int status = 0;
    ::waitpid(process, &status, 0);
    return WIFSIGNALED(status);
}

void remove_leftovers(const Workspace& workspace) {
    for (const std::string& name : workspace.names())
        if (name.ends_with(".part"))
            std::filesystem::remove(workspace.path(name));
}

} // namespace

TEST_CASE("a program killed at any moment leaves the old file or the new one, whole") {
    const Workspace workspace;
    workspace.write("a.json", long_job("Job A", 60, false));
    workspace.write("b.json", long_job("Job B", 60, false));
    const std::string a = run(workspace, {.words = {"a.json", "--json"}}).out;
    const std::string b = run(workspace, {.words = {"b.json", "--json"}}).out;
    REQUIRE(a.size() > 50'000);
    REQUIRE(a != b);

    const auto began = Clock::now();
    REQUIRE(run(workspace, {.words = {"a.json", "--json", "-o", "plan.json"}}).status == 0);
    const auto whole = std::chrono::duration_cast<std::chrono::microseconds>(Clock::now() - began);

    std::mt19937 random(20'260'101); // the same delays, as shares of a whole run, every time
    std::uniform_real_distribution<double> share(0.0, 1.5);
    int killed = 0;
    for (int i = 0; i < kills; ++i) {
        const std::string before = workspace.read("plan.json");
        const bool to_b = before == a;
        const auto delay = std::chrono::duration_cast<std::chrono::microseconds>(share(random) * whole);
        const bool was_running =
            killed_after(workspace, {to_b ? "b.json" : "a.json", "--json", "-o", "plan.json"}, delay);
        killed += was_running ? 1 : 0;
        const std::string after = workspace.read("plan.json");
        const std::string& next = to_b ? b : a;
        INFO("run " << i << ", killed " << was_running);
        REQUIRE((after == next || (was_running && after == before)));
        remove_leftovers(workspace);
    }
    // Both ends must have been met, or the delays proved nothing.
    CHECK(killed > kills / 10);
    CHECK(kills - killed > kills / 20);
}

TEST_CASE("a program that is asked to end leaves nothing beside its file, plan or workbook") {
    const Workspace workspace;
    workspace.write("a.json", long_job("Job A", 20, false));
    std::mt19937 random(20'260'102);
    std::uniform_real_distribution<double> share(0.0, 1.3);
    int ended = 0;
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"a.json", "--json", "-o", "plan.json"},
          {"quote", "a.json", "-o", "quote.xlsx"}}) {
        const auto began = Clock::now();
        REQUIRE(run(workspace, {.words = words}).status == 0);
        const auto whole = std::chrono::duration_cast<std::chrono::microseconds>(Clock::now() - began);
        const auto names = workspace.names();
        for (int i = 0; i < asked_to_end / 2; ++i) {
            const int signal = i % 3 == 0 ? SIGINT : i % 3 == 1 ? SIGTERM : SIGHUP;
            const auto delay = std::chrono::duration_cast<std::chrono::microseconds>(share(random) * whole);
            ended += killed_after(workspace, words, delay, signal) ? 1 : 0;
            INFO(words.back() << ", run " << i);
            REQUIRE(workspace.names() == names);
        }
    }
    CHECK(ended > asked_to_end / 4);
    CHECK(ended < asked_to_end);
}
