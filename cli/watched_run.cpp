#include "watched_run.hpp"

#include <array>
#include <atomic>
#include <cerrno>
#include <csignal>
#include <cstring>
#include <string>
#include <system_error>

#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>

#include <ringfill/fault/fault.hpp>
#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/material/plugin_run.hpp>

#include "shared_memory.hpp"
#include "terminal.hpp"

namespace ringfill::cli {
namespace {

constexpr std::array passed_on = {SIGINT, SIGTERM, SIGHUP, SIGQUIT};

/// What both processes see.
struct Watched {
    PluginTrace plugins;
    std::atomic<bool> came_back = false;    ///< the command has returned
    std::atomic<int> status = 0;            ///< it returned
    std::atomic<bool> streams_kept = false; ///< they lead where they led before
    std::atomic<bool> error_kept = false;   ///< standard error does, so that faults were seen
};

// All that the signal handler of the watching process may touch.
std::atomic<pid_t> watched_process = 0;
std::atomic<int> asked_to_end_by = 0;

void pass_on(int signal, siginfo_t* from, void* /*context*/) {
    asked_to_end_by = signal;
    const bool by_terminal = from->si_code > 0; // which has asked the whole group
    if (!by_terminal)
        ::kill(watched_process, signal);
}

/// Holds signals back while there is nobody to pass them on to.
class HeldBack {
  public:
    HeldBack() {
        sigset_t all;
        ::sigemptyset(&all);
        for (const int signal : passed_on)
            ::sigaddset(&all, signal);
        ::sigprocmask(SIG_BLOCK, &all, &before_);
    }
    HeldBack(const HeldBack&) = delete;
    HeldBack& operator=(const HeldBack&) = delete;
    ~HeldBack() { ::sigprocmask(SIG_SETMASK, &before_, nullptr); }

  private:
    sigset_t before_ = {};
};

void pass_signals_on() {
    struct sigaction action = {};
    action.sa_sigaction = pass_on;
    action.sa_flags = SA_RESTART | SA_SIGINFO;
    for (const int signal : passed_on) {
        struct sigaction before = {};
        ::sigaction(signal, nullptr, &before);
        if (before.sa_handler != SIG_IGN) // nohup stays nohup
            ::sigaction(signal, &action, nullptr);
    }
}

ExitCode be_watched(Watched& seen, pid_t watcher, const std::function<ExitCode()>& command) {
    ::prctl(PR_SET_PDEATHSIG, SIGKILL); // nobody is left to tell how it ended
    if (::getppid() != watcher)
        ::_exit(our_fault);
    const StandardStreams before = standard_streams();
    note_plugin_runs(&seen.plugins);
    const ExitCode status = command();
    note_plugin_runs(nullptr);
    seen.status = status;
    const StandardStreams after = standard_streams();
    seen.streams_kept = after == before;
    seen.error_kept = after[STDERR_FILENO] == before[STDERR_FILENO];
    seen.came_back = true;
    return status;
}

std::string ending(int status) {
    if (WIFSIGNALED(status))
        return fmt::format("signal {}, {}", WTERMSIG(status), ::strsignal(WTERMSIG(status)));
    return fmt::format("exit status {}", WEXITSTATUS(status));
}

[[noreturn]] void end_likewise(int signal) {
    (void)std::signal(signal, SIG_DFL);
    (void)std::raise(signal);
    ::_exit(our_fault);
}

ExitCode blame(const std::string& plugins, std::string what) {
    complain(to_string(fault_in_file(printable(plugins), std::move(what),
                                     "take it away, or see what ringfill materials --check tells of it")) +
             "\n");
    return broken_table;
}

/// The plugin that ran last, if it is one of others; else all of others.
std::string suspects(const Watched& seen, const std::vector<std::string>& plugins) {
    const std::string last = seen.plugins.file.data();
    return ranges::contains(plugins, last) ? last : listed(plugins, ", ");
}

/// What came of the command, as waitpid tells how its process ended.
ExitCode outcome(const Watched& seen, int ended, const std::vector<std::string>& plugins) {
    const bool asked = seen.plugins.calls > 0; // else no plugin can have done anything
    const bool as_it_came_back = WIFEXITED(ended) && WEXITSTATUS(ended) == seen.status;
    if (seen.came_back && asked && !seen.streams_kept && (seen.status == planned || !seen.error_kept))
        return blame(suspects(seen, plugins), "closed or replaced a standard stream of the program");
    if (seen.came_back && as_it_came_back)
        return static_cast<ExitCode>(seen.status.load());
    if (WIFSIGNALED(ended) && (asked_to_end_by != 0 || !asked))
        end_likewise(WTERMSIG(ended));
    if (!asked)
        return static_cast<ExitCode>(WEXITSTATUS(ended));
    if (seen.plugins.inside)
        return blame(seen.plugins.file.data(),
                     fmt::format("ended the program or put another in its place ({})", ending(ended)));
    return blame(suspects(seen, plugins),
                 fmt::format("was loaded when something ended the program ({})", ending(ended)));
}

} // namespace

ExitCode run_watched(const std::vector<std::string>& plugins, const std::function<ExitCode()>& command) {
    const SharedMemory<Watched> seen;
    const pid_t watcher = ::getpid();
    int ended = 0;
    {
        const HeldBack held;
        const pid_t child = ::fork();
        if (child < 0)
            throw std::system_error(errno, std::generic_category(), "a process for the command");
        watched_process = child;
        if (child > 0)
            pass_signals_on();
    }
    if (watched_process == 0)
        return be_watched(*seen, watcher, command);
    while (::waitpid(watched_process, &ended, 0) < 0)
        if (errno != EINTR)
            throw std::system_error(errno, std::generic_category(), "waiting for the command");
    return outcome(*seen, ended, plugins);
}

} // namespace ringfill::cli
