#pragma once

#include <array>
#include <fcntl.h>
#include <string>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

#include <catch2/catch.hpp>

#include <fmt/format.h>

#include "run_program.hpp"

namespace ringfill::testing {

/// The program with pipes to talk to it while it runs.
struct Talk {
    pid_t process;
    int to;
    int from;
    int errors;

    Talk(const Workspace& workspace, const std::vector<std::string>& words) {
        std::array<int, 2> in{};
        std::array<int, 2> out{};
        std::array<int, 2> err{};
        REQUIRE(::pipe2(in.data(), O_CLOEXEC) == 0);
        REQUIRE(::pipe2(out.data(), O_CLOEXEC) == 0);
        REQUIRE(::pipe2(err.data(), O_CLOEXEC) == 0);
        process = start_program(workspace.folder(), {.words = words}, in[0], out[1], err[1]);
        for (const int end : {in[0], out[1], err[1]})
            ::close(end);
        to = in[1];
        from = out[0];
        errors = err[0];
    }
    Talk(const Talk&) = delete;
    Talk& operator=(const Talk&) = delete;
    ~Talk() {
        for (const int end : {to, from, errors})
            ::close(end);
    }

    void say(const std::string& text) const {
        REQUIRE(::write(to, text.data(), text.size()) == static_cast<ssize_t>(text.size()));
    }
    std::string hear_line() const {
        std::string line;
        for (char sign = 0; sign != '\n' && ::read(from, &sign, 1) == 1;)
            line += sign;
        return line;
    }
    static std::string rest_of(int descriptor) {
        std::string text;
        std::array<char, 4096> buffer{};
        for (ssize_t got = 0; (got = ::read(descriptor, buffer.data(), buffer.size())) > 0;)
            text.append(buffer.data(), static_cast<std::size_t>(got));
        return text;
    }
    /// Waits until the program hears a signal itself.
    void wait_until_caught(int signal) const {
        const std::string file = fmt::format("/proc/{}/status", process);
        for (bool caught = false; !caught; ::usleep(1'000)) {
            const std::string status = content_of(file);
            const std::size_t at = status.find("SigCgt:");
            REQUIRE(at != std::string::npos);
            caught = (std::stoull(status.substr(at + 7), nullptr, 16) >> (signal - 1) & 1U) != 0;
        }
    }
    int status() const {
        int status = 0;
        REQUIRE(::waitpid(process, &status, 0) == process);
        REQUIRE(WIFEXITED(status));
        return WEXITSTATUS(status);
    }
};

} // namespace ringfill::testing
