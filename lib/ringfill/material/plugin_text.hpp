#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace ringfill {

/// The first byte of a text that is no UTF-8, counted from 1, if there is one.
std::optional<std::size_t> not_utf8_at(std::string_view text);

/// Whether a text is UTF-8 and holds nothing that could disturb a terminal or reorder a line.
bool is_clean(std::string_view text);

} // namespace ringfill
