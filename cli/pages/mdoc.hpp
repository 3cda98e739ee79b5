#pragma once

#include <string>
#include <string_view>

namespace ringfill::cli {

/// A text as an argument of a macro of the manual, or within a line of text: ASCII, nothing in it is a
/// request.
std::string mdoc_text(std::string_view text);

/// Lines of running text, each sentence on a line of its own; line breaks in it count as blanks.
std::string mdoc_prose(std::string_view text);

/// A program text or a line to type, shown as it stands.
std::string mdoc_literal(std::string_view text);

} // namespace ringfill::cli
