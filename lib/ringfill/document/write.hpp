#pragma once

#include <string>

#include <ringfill/document/value.hpp>

namespace ringfill {

/// The value as JSON text: two blanks of indent, members in their order, short lists of plain values on one
/// line, numbers in the fewest digits that keep fifteen significant ones. Ends in a line break. Throws
/// std::logic_error for a number that is not finite: no such number may reach a result.
std::string write_json(const Value& value);

/// The same on one line without blanks: one value of JSON Lines, its line break included.
std::string write_json_line(const Value& value);

/// The same put behind a text, without the line break.
void append_json(std::string& text, const Value& value);

/// A number in the fewest digits that keep fifteen significant ones; never with an exponent between 1e-5 and
/// 1e15.
std::string write_number(double number);

} // namespace ringfill
