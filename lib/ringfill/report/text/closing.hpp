#pragma once

#include <string>
#include <string_view>

namespace ringfill {

/// The last line of every print.
std::string_view closing();

/// The same as the end of a text, after a blank line.
std::string closing_line();

} // namespace ringfill
