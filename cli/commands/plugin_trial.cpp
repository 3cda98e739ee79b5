#include "plugin_trial.hpp"

#include <algorithm>
#include <array>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <iostream>
#include <stdexcept>
#include <system_error>
#include <utility>

#include <fcntl.h>
#include <poll.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/material/plugin_run.hpp>

#include "../progress_line.hpp"
#include "../shared_memory.hpp"

namespace ringfill::cli {
namespace {

using Clock = std::chrono::steady_clock;

constexpr std::chrono::seconds time_limit{20}; // for one call, or for what a rule does without one
constexpr std::size_t longest_trial_line = 1'000;
constexpr std::size_t most_kept = 1'000'000; // of what the child writes; the rest is read and forgotten

// A line of the child's report begins with one of these; the parts of a line are parted by `parting`.
constexpr char begins = 'b';
constexpr char rule_ends = 'e';
constexpr char own_fault = 'x';
constexpr char whole = 'w';
constexpr char parting = '\x1F';

class Pipe {
  public:
    Pipe() {
        if (::pipe2(ends_.data(), O_CLOEXEC) != 0)
            throw std::system_error(errno, std::generic_category(), "a pipe to the plugin's process");
    }
    Pipe(const Pipe&) = delete;
    Pipe& operator=(const Pipe&) = delete;
    ~Pipe() {
        close_end(0);
        close_end(1);
    }
    int reading() const { return ends_[0]; }
    int writing() const { return ends_[1]; }
    void close_end(std::size_t which) {
        if (ends_[which] >= 0)
            ::close(std::exchange(ends_[which], -1));
    }

  private:
    std::array<int, 2> ends_{-1, -1};
};

struct Pipes {
    Pipe out;
    Pipe err;
    Pipe report;
};

void write_line(int descriptor, char kind, const std::string& text) {
    const std::string line = fmt::format("{}{}\n", kind, text);
    std::size_t done = 0;
    while (done < line.size()) {
        const ssize_t written = ::write(descriptor, line.data() + done, line.size() - done);
        if (written < 0 && errno != EINTR)
            ::_exit(EXIT_FAILURE); // nobody listens any more
        if (written > 0)
            done += static_cast<std::size_t>(written);
    }
}

/// The child: a crash must end it plainly, and what was printed must arrive.
[[noreturn]] void be_child(const std::string& file, const Bibliography& sources, Pipes& pipes,
                           PluginTrace& trace) {
    ::setpgid(0, 0);                      // so that what the plugin starts can be ended with it
    ::prctl(PR_SET_CHILD_SUBREAPER, 1UL); // and is seen, also when what has started it is gone
    note_plugin_runs(&trace);
    for (Pipe* pipe : {&pipes.out, &pipes.err, &pipes.report})
        pipe->close_end(0);
    const rlimit no_core{0, 0};
    ::setrlimit(RLIMIT_CORE, &no_core);
    for (const int crash : {SIGSEGV, SIGBUS, SIGFPE, SIGILL, SIGABRT})
        (void)std::signal(crash, SIG_DFL);
    ::dup2(pipes.out.writing(), STDOUT_FILENO);
    ::dup2(pipes.err.writing(), STDERR_FILENO);
    const int report = pipes.report.writing();
    ConformanceWatch watch;
    watch.begins = [&](const std::string& rule) { write_line(report, begins, rule); };
    watch.ends = [&](const RuleKept& rule) {
        write_line(report, rule_ends,
                   fmt::format("{}{}{}", rule.rule, parting, printable(rule.broken, longest_trial_line)));
    };
    try {
        conformance(file, sources, watch);
        std::cout.flush();
        (void)std::fflush(nullptr);
        write_line(report, whole, {});
    } catch (const std::exception& error) {
        write_line(report, own_fault, error.what());
    }
    std::exit(EXIT_SUCCESS); // as the program ends, with what the plugin has left to be done then
}

void keep(std::string& text, const char* data, ssize_t bytes) {
    if (bytes > 0 && text.size() < most_kept)
        text.append(data, static_cast<std::size_t>(bytes));
}

/// Reads what is there; false when the other side is closed.
bool read_some(int descriptor, std::string& into) {
    std::array<char, 65'536> buffer{};
    const ssize_t got = ::read(descriptor, buffer.data(), buffer.size());
    keep(into, buffer.data(), got);
    return got > 0 || (got < 0 && (errno == EINTR || errno == EAGAIN));
}

struct Heard {
    std::array<std::string, 3> texts; ///< standard output, standard error, report
    int status = 0;                   ///< as waitpid gives it
    bool too_slow = false;
};

/// Reads what the child has written by now.
void read_what_is_there(std::array<pollfd, 3>& open, Heard& heard) {
    constexpr int reads = 1'000; // then the clock is looked at again, however much there is
    for (std::size_t i = 0; i < open.size(); ++i)
        for (int k = 0; k < reads && open[i].fd >= 0 && ::poll(&open[i], 1, 0) > 0; ++k)
            if (!read_some(open[i].fd, heard.texts[i]))
                open[i].fd = -1; // which poll skips
}

/// The rule that the child has begun last.
std::string rule_begun(const std::string& report) {
    const std::size_t line = report.rfind(fmt::format("\n{}", begins));
    const std::size_t from = line == std::string::npos ? 1 : line + 2;
    return report.empty() ? std::string() : report.substr(from, report.find('\n', from) - from);
}

/// Listens until the child has ended, or has neither reported anything nor begun a call for too long.
Heard listen(pid_t child, const std::array<int, 3>& descriptors, const PluginTrace& trace) {
    Heard heard;
    ProgressLine line;
    std::array<pollfd, 3> open{};
    for (std::size_t i = 0; i < open.size(); ++i)
        open[i] = {descriptors[i], POLLIN, 0};
    auto deadline = Clock::now() + time_limit;
    unsigned calls = 0;
    for (bool ended = false; !ended;) {
        constexpr int a_moment_ms = 20;
        ::poll(open.data(), open.size(), a_moment_ms);
        ended = ::waitpid(child, &heard.status, WNOHANG) == child;
        if (!ended && Clock::now() > deadline) {
            heard.too_slow = true;
            ::kill(child, SIGKILL);
            ::waitpid(child, &heard.status, 0);
            ended = true;
        }
        if (ended)
            ::kill(-child, SIGKILL); // what the plugin has started and left behind
        const std::size_t reported = heard.texts[2].size();
        read_what_is_there(open, heard);
        if (heard.texts[2].size() > reported || trace.calls != std::exchange(calls, trace.calls))
            deadline = Clock::now() + time_limit;
        line.show("trying: " + rule_begun(heard.texts[2]), 0, 0);
    }
    return heard;
}

/// Reads the child's report; whether it came to its end.
bool read_report(const std::string& report, PluginTrial& trial) {
    bool came_to_its_end = false;
    for (std::size_t from = 0; from < report.size();) {
        const std::size_t end = std::min(report.find('\n', from), report.size());
        const char kind = report[from];
        const std::string text = report.substr(from + 1, end - from - 1);
        from = end + 1;
        if (kind == own_fault)
            throw std::runtime_error(text);
        if (kind == begins)
            trial.during = text;
        if (kind == rule_ends) {
            const std::size_t part = std::min(text.find(parting), text.size() - 1);
            trial.rules.push_back({text.substr(0, part), text.substr(part + 1)});
            trial.during.clear();
        }
        came_to_its_end = came_to_its_end || kind == whole;
    }
    return came_to_its_end;
}

std::string ending(const Heard& heard) {
    if (heard.too_slow)
        return fmt::format("did not come back within {} seconds", time_limit.count());
    if (WIFSIGNALED(heard.status))
        return fmt::format("ended by signal {} ({})", WTERMSIG(heard.status),
                           ::strsignal(WTERMSIG(heard.status)));
    return fmt::format("ended the program with exit status {}", WEXITSTATUS(heard.status));
}

} // namespace

PluginTrial try_plugin(const std::string& file, const Bibliography& sources) {
    Pipes pipes;
    const SharedMemory<PluginTrace> trace;
    std::cout.flush();
    (void)std::fflush(nullptr); // or the child would print it once more
    const pid_t child = ::fork();
    if (child < 0)
        throw std::system_error(errno, std::generic_category(), "a process for the plugin");
    if (child == 0)
        be_child(file, sources, pipes, *trace);
    ::setpgid(child, child); // whoever comes first
    for (Pipe* pipe : {&pipes.out, &pipes.err, &pipes.report})
        pipe->close_end(1);
    const Heard heard =
        listen(child, {pipes.out.reading(), pipes.err.reading(), pipes.report.reading()}, *trace);
    PluginTrial trial;
    if (!read_report(heard.texts[2], trial) || heard.too_slow || heard.status != 0)
        trial.ended_early = ending(heard);
    trial.printed = heard.texts[0];
    trial.complained = heard.texts[1];
    return trial;
}

} // namespace ringfill::cli
