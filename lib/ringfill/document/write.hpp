#pragma once

#include <string>
#include <string_view>

#include <fmt/format.h>

#include <ringfill/document/value.hpp>

namespace ringfill {

/// The value as JSON text: two blanks of indent, members in their order, short lists of plain values on one
/// line, numbers in the fewest digits that keep fifteen significant ones. Ends in a line break. Throws
/// std::logic_error for a number that is not finite: no such number may reach a result.
std::string write_json(const Value& value);

/// The same on one line without blanks: one value of JSON Lines, its line break included.
std::string write_json_line(const Value& value);

/// What a result is written into: a text that is quick to lengthen by a few characters.
using JsonText = fmt::memory_buffer;

/// The same put behind a text, without the line break.
void append_json(JsonText& to, const Value& value);

/// A text as JSON put behind another. What could disturb a terminal is escaped, so that a result can be
/// looked at; a reader gets the same text.
void append_text(JsonText& to, std::string_view text);

/// A number put behind a text in the fewest digits that keep fifteen significant ones, which its scientific
/// form is asked for; never with an exponent between 1e-5 and 1e15. Throws std::logic_error for one that is
/// not finite.
void append_number(JsonText& to, double number);

/// The same alone.
std::string write_number(double number);

} // namespace ringfill
