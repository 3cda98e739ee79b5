#pragma once

#include <cfenv>
#include <string>
#include <utility>
#include <vector>

namespace ringfill {

/// How this thread's arithmetic is done: what a plugin must leave as it is.
struct ArithmeticModes {
    int rounding = 0;
    int traps = 0;             ///< exceptions that end the program, where the system tells
    bool small_numbers = true; ///< denormal numbers are neither made nor taken as zero
    unsigned control = 0;      ///< the control register, where there is one to read
    friend bool operator==(const ArithmeticModes&, const ArithmeticModes&) = default;
};

ArithmeticModes arithmetic_modes();

/// Keeps the floating-point environment of this thread and puts it back at its end.
class ArithmeticGuard {
  public:
    ArithmeticGuard() noexcept { std::fegetenv(&environment_); }
    ArithmeticGuard(const ArithmeticGuard&) = delete;
    ArithmeticGuard& operator=(const ArithmeticGuard&) = delete;
    ~ArithmeticGuard() { std::fesetenv(&environment_); }

    /// Puts the environment back now; whether rounding, traps or the handling of small numbers were changed.
    bool put_back() noexcept;

  private:
    std::fenv_t environment_{};
    ArithmeticModes before_ = arithmetic_modes();
};

/// What a plugin must leave alone in the process, each with its state in words, in a fixed order: locale,
/// decimal point, working directory, rights of new files, signal handlers, open files, blocked signals,
/// limits, child processes, threads. (The arithmetic is guarded around each call.)
using Surroundings = std::vector<std::pair<std::string, std::string>>;

Surroundings surroundings();

} // namespace ringfill
