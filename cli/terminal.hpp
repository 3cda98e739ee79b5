#pragma once

#include <string>
#include <string_view>

#include <ringfill/report/text/layout.hpp>

namespace ringfill::cli {

/// How a report to that output is dressed: on a terminal that takes it, unless NO_COLOR is set.
Style style_for(const std::string& output);

/// Sends a result to a file, or for an empty name to standard output. A reader that has closed the pipe is no
/// fault: it had enough. Throws Faulty (Origin::file) when the result cannot be written whole.
void deliver(std::string_view text, const std::string& output);

/// Sends a part of a result to standard output; false when its reader has closed the pipe. Throws likewise.
bool deliver_more(std::string_view text);

/// Writes a message to standard error.
void complain(std::string_view text);

} // namespace ringfill::cli
