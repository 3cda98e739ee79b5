#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace ringfill {

/// One character of a UTF-8 text: its code point and how many bytes it takes.
struct Character {
    std::uint32_t code = 0xFFFD;
    std::size_t bytes = 1;
};

/// The character at a byte of a text, or U+FFFD of one byte where the text is no UTF-8.
Character character_at(std::string_view utf8, std::size_t byte);

/// Whether a character could disturb a terminal or reorder a line: a control character, a line break, a mark
/// of writing direction, something invisible, or the stand-in for what is no UTF-8.
bool disturbs(std::uint32_t code);

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
