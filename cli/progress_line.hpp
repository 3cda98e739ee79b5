#pragma once

#include <chrono>
#include <cstddef>
#include <string_view>

namespace ringfill::cli {

/// One line on standard error that tells how far long work is, written over and over and gone at the end. It
/// shows only on a terminal, and only once the work has lasted longer than anybody waits without a word.
class ProgressLine {
  public:
    ProgressLine();
    ~ProgressLine();
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;

    /// What is worked on, which of how many; `of` 0: nobody knows how many, `at` 0 too: nothing is counted.
    void show(std::string_view what, std::size_t at, std::size_t of);

  private:
    using Clock = std::chrono::steady_clock;

    bool on_terminal_;
    bool shown_ = false;
    Clock::time_point next_;
};

} // namespace ringfill::cli
