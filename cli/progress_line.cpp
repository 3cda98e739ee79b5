#include "progress_line.hpp"

#include <cstdlib>

#include <unistd.h>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>

#include "terminal.hpp"

namespace ringfill::cli {
namespace {

constexpr std::chrono::milliseconds patience{400}; // before the first word
constexpr std::chrono::milliseconds pace{200};     // from one to the next
constexpr std::size_t longest = 60;                // characters, so that the line never wraps

constexpr std::string_view to_line_start = "\r\033[K"; // and clears the line

} // namespace

ProgressLine::ProgressLine() : next_(Clock::now() + patience) {
    const char* terminal = std::getenv("TERM");
    on_terminal_ = terminal && std::string_view(terminal) != "dumb" && ::isatty(STDERR_FILENO) == 1;
}

ProgressLine::~ProgressLine() {
    if (shown_)
        complain(to_line_start);
}

void ProgressLine::show(std::string_view what, std::size_t at, std::size_t of) {
    if (!on_terminal_ || Clock::now() < next_)
        return;
    next_ = Clock::now() + pace;
    shown_ = true;
    const std::string shown = printable(what, longest);
    complain(of > 0   ? fmt::format("{}{} {} of {}", to_line_start, shown, at, of)
             : at > 0 ? fmt::format("{}{} {}", to_line_start, shown, at)
                      : fmt::format("{}{}", to_line_start, shown));
}

} // namespace ringfill::cli
