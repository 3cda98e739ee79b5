#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace ringfill {

/// Number of characters (code points) of a UTF-8 text; each byte that is no UTF-8 counts as one.
std::size_t count_characters(std::string_view utf8);

/// The end of a text, at most `count` characters of it.
std::string_view last_characters(std::string_view utf8, std::size_t count);

/// The text with nothing in it that could disturb a terminal or reorder a line: control characters, line
/// breaks, marks of writing direction and bytes that are no UTF-8 become U+FFFD, and what is longer than
/// `longest` characters is cut and ends in an ellipsis.
std::string printable(std::string_view utf8, std::size_t longest = 200);

/// The printable text in double quotes, cut to 60 characters.
std::string in_quotes(std::string_view utf8);

} // namespace ringfill
