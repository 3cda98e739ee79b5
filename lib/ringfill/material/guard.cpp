#include <ringfill/fault/listed.hpp>
#include <ringfill/material/guard.hpp>

#include <algorithm>
#include <clocale>
#include <csignal>
#include <cstdint>
#include <filesystem>
#include <limits>

#include <fenv.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>

#ifdef __SSE__
#include <xmmintrin.h>
#endif

#include <fmt/format.h>

namespace ringfill {
namespace {

/// Whether a quotient below the smallest normal number is kept, and can be used again. Volatile: the machine
/// must do it now, not the compiler.
bool keeps_small_numbers() {
    volatile double least = std::numeric_limits<double>::min();
    volatile double small = least / 4;
    volatile double back = small * 4;
    return back == least;
}

namespace fs = std::filesystem;

std::string working_directory() {
    std::error_code error;
    const fs::path path = fs::current_path(error);
    return error ? error.message() : path.string();
}

std::string rights_of_new_files() {
    const mode_t mask = ::umask(0);
    ::umask(mask);
    return fmt::format("{:03o}", mask);
}

std::string handler_in_words(int signal) {
    struct sigaction action = {};
    if (::sigaction(signal, nullptr, &action) != 0)
        return "unknown";
    if (action.sa_handler == SIG_DFL)
        return "the usual one";
    if (action.sa_handler == SIG_IGN)
        return "ignored";
    return fmt::format("a function ({:x})", reinterpret_cast<std::uintptr_t>(action.sa_handler));
}

std::string signal_handlers() {
    constexpr std::pair<int, const char*> signals[] = {
        {SIGSEGV, "SEGV"}, {SIGBUS, "BUS"},   {SIGFPE, "FPE"},   {SIGILL, "ILL"},   {SIGABRT, "ABRT"},
        {SIGINT, "INT"},   {SIGTERM, "TERM"}, {SIGPIPE, "PIPE"}, {SIGALRM, "ALRM"}, {SIGCHLD, "CHLD"}};
    std::vector<std::string> all;
    for (const auto& [signal, name] : signals)
        all.push_back(fmt::format("{} {}", name, handler_in_words(signal)));
    return listed(all, ", ");
}

std::string blocked_signals() {
    sigset_t blocked;
    ::sigemptyset(&blocked);
    ::pthread_sigmask(SIG_BLOCK, nullptr, &blocked);
    std::vector<std::string> all;
    for (int signal = 1; signal <= SIGRTMAX; ++signal)
        if (::sigismember(&blocked, signal) == 1)
            all.push_back(std::to_string(signal));
    return all.empty() ? "none" : listed(all, ", ");
}

std::string limits() {
    constexpr std::pair<decltype(RLIMIT_CPU), const char*> kinds[] = {
        {RLIMIT_AS, "memory"},       {RLIMIT_CORE, "core"},  {RLIMIT_CPU, "processor time"},
        {RLIMIT_DATA, "data"},       {RLIMIT_FSIZE, "file"}, {RLIMIT_NOFILE, "open files"},
        {RLIMIT_NPROC, "processes"}, {RLIMIT_STACK, "stack"}};
    std::vector<std::string> all;
    for (const auto& [kind, name] : kinds) {
        struct rlimit limit = {};
        ::getrlimit(kind, &limit);
        const auto in_words = [](rlim_t most) {
            return most == RLIM_INFINITY ? std::string("any") : std::to_string(most);
        };
        all.push_back(fmt::format("{} {} of {}", name, in_words(limit.rlim_cur), in_words(limit.rlim_max)));
    }
    return listed(all, ", ");
}

/// Whether this process has children, running or not yet waited for, and whether it has waited for others.
std::string child_processes() {
    siginfo_t any = {};
    const bool left = ::waitid(P_ALL, 0, &any, WEXITED | WNOHANG | WNOWAIT) == 0;
    struct rusage ended = {};
    ::getrusage(RUSAGE_CHILDREN, &ended);
    return fmt::format("{} left, {} ended", left ? "some" : "none", ended.ru_maxrss > 0 ? "some" : "none");
}

/// The entries of a folder of /proc, sorted, with what each leads to.
std::string entries(const char* folder) {
    std::vector<std::string> all;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(folder, error)) {
        all.push_back(entry.path().filename().string());
        if (const fs::path target = fs::read_symlink(entry.path(), error); !error)
            all.back() += " " + target.string();
    }
    std::sort(all.begin(), all.end());
    return listed(all, ", ");
}

} // namespace

ArithmeticModes arithmetic_modes() {
    ArithmeticModes modes;
    modes.rounding = std::fegetround();
#ifdef __GLIBC__
    modes.traps = ::fegetexcept();
#endif
#ifdef __SSE__
    constexpr unsigned raised = 0x3F; // the bits that tell what happened, which are no mode
    modes.control = _mm_getcsr() & ~raised;
#endif
    // With underflow trapped, trying it out would end the program; the traps differ then anyway.
    modes.small_numbers = modes.traps != 0 || keeps_small_numbers();
    return modes;
}

bool ArithmeticGuard::put_back() noexcept {
    const bool changed = arithmetic_modes() != before_;
    std::fesetenv(&environment_);
    return changed;
}

Surroundings surroundings() {
    const char* locale = std::setlocale(LC_ALL, nullptr);
    return {{"the locale", locale ? locale : "unknown"},
            {"the decimal point", std::localeconv()->decimal_point},
            {"the working directory", working_directory()},
            {"the rights of new files", rights_of_new_files()},
            {"the signal handlers", signal_handlers()},
            {"the open files", entries("/proc/self/fd")},
            {"the blocked signals", blocked_signals()},
            {"the limits of the process", limits()},
            {"the child processes", child_processes()},
            {"the threads", entries("/proc/self/task")}};
}

} // namespace ringfill
