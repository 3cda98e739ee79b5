#pragma once

#include <ringfill/document/entry.hpp>

namespace ringfill {

/// How long a description, a title or a note in a table may be [characters].
inline constexpr Span table_words{1, 2'000};

/// Whether a table opens with its format signature (field "format") and says what it holds ("description");
/// what is missing is noted. An unknown version is refused rather than half understood.
bool has_signature(const Entry& table);

} // namespace ringfill
