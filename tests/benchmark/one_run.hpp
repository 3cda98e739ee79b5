#pragma once

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

#include <fcntl.h>
#include <sched.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace ringfill::testing {

/// What one run of a program took.
struct Run {
    double milliseconds = 0;
    double processor_milliseconds = 0;
    long kilobytes = 0; ///< at most, as resident
};

/// Runs a program to its end, its output thrown away, on the first core alone or on all. Ends this program
/// when it fails.
inline Run run_once(std::vector<std::string> words, bool on_one_core = false) {
    std::vector<char*> argv;
    for (std::string& word : words)
        argv.push_back(word.data());
    argv.push_back(nullptr);
    const auto begin = std::chrono::steady_clock::now();
    const pid_t child = ::fork();
    if (child == 0) {
        if (on_one_core) {
            cpu_set_t one;
            CPU_ZERO(&one);
            CPU_SET(0, &one);
            ::sched_setaffinity(0, sizeof one, &one);
        }
        ::dup2(::open("/dev/null", O_WRONLY), STDOUT_FILENO);
        ::execv(argv.front(), argv.data());
        ::_exit(127);
    }
    int status = 0;
    rusage used = {};
    ::wait4(child, &status, 0, &used);
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begin;
    if (!WIFEXITED(status) || WEXITSTATUS(status) != 0) {
        std::fprintf(stderr, "%s did not run\n", words.front().c_str());
        std::exit(1);
    }
    const auto milliseconds = [](const timeval& time) {
        return 1e3 * static_cast<double>(time.tv_sec) + 1e-3 * static_cast<double>(time.tv_usec);
    };
    return {took.count(), milliseconds(used.ru_utime) + milliseconds(used.ru_stime), used.ru_maxrss};
}

} // namespace ringfill::testing
