#pragma once

#include <ringfill/document/entry.hpp>

namespace ringfill {

/// Whether a table opens with its format signature (field "format") and says what it holds ("description");
/// what is missing is noted. An unknown version is refused rather than half understood.
bool has_signature(const Entry& table);

} // namespace ringfill
