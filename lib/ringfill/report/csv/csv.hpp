#pragma once

#include <string>
#include <variant>
#include <vector>

namespace ringfill {

/// A cell of a table: a text, or a number.
using Cell = std::variant<std::string, double>;

/// Rows as comma-separated values (RFC 4180: UTF-8, lines end in CR LF, quotes doubled). A text that a
/// spreadsheet would take for a formula, because it begins with = + - or @, gets an apostrophe before it;
/// tabs, line breaks and whatever else could disturb become U+FFFD. Numbers are finite and written as in
/// JSON.
std::string csv(const std::vector<std::vector<Cell>>& rows);

} // namespace ringfill
