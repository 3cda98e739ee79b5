#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <utility>

namespace ringfill {

/// One line of a text, without its line break.
struct Line {
    std::size_t number = 0; ///< from 1
    std::string text;       ///< of a line that is too long, its beginning
    bool too_long = false;
};

/// Takes a text apart into lines as it comes in, without ever holding more than one line and one helping.
class Lines {
  public:
    /// Puts up to `most` bytes at `into` and tells how many; 0 at the end of the text. What it throws goes
    /// through.
    using Source = std::function<std::size_t(char* into, std::size_t most)>;

    /// @param longest bytes of a line that is kept; what a longer one has beyond is read and forgotten.
    Lines(Source source, std::size_t longest) : source_(std::move(source)), longest_(longest) {}

    /// The next line, or nothing after the last. A line break at the very end begins no further line.
    std::optional<Line> next();

  private:
    bool fill();

    Source source_;
    std::size_t longest_;
    std::size_t number_ = 0;
    std::string helping_;
    std::size_t at_ = 0;
    bool ended_ = false;
};

} // namespace ringfill
