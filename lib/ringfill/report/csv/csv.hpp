#pragma once

#include <string>
#include <vector>

#include <ringfill/document/value.hpp>

namespace ringfill {

/// Rows of texts and numbers as comma-separated values (RFC 4180: UTF-8, lines end in CR LF, quotes doubled);
/// any other value is an empty cell. A text that a spreadsheet would take for a formula, because it begins
/// with = + - or @, gets an apostrophe before it; tabs, line breaks and whatever else could disturb become
/// U+FFFD. Numbers are finite and written as in JSON.
std::string csv(const std::vector<Value::List>& rows);

} // namespace ringfill
