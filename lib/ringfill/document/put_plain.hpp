#pragma once

#include <string_view>

#include <ringfill/document/text_end.hpp>

namespace ringfill {

/// A text as JSON. What could disturb a terminal is escaped, so that a result can be looked at; a reader gets
/// the same text.
void put_text(TextEnd& out, std::string_view text);

/// A number in the fewest digits that keep fifteen significant ones, which its scientific form is asked for.
/// Throws std::logic_error for one that is not finite.
void put_number(TextEnd& out, double number);

} // namespace ringfill
