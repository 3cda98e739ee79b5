#pragma once

#include <string>
#include <string_view>

namespace ringfill {

/// The line of a text that holds a byte offset, and a caret under the character at it, both indented by four.
/// A long line is shown around the caret only; nothing in it can disturb a terminal. Two lines without a
/// final line break; empty when the offset lies past the end of a text without a last line.
std::string excerpt(std::string_view text, std::size_t offset);

} // namespace ringfill
