#pragma once

#include <algorithm>
#include <cstddef>
#include <string_view>

namespace ringfill {

/// A text as a template argument.
template <std::size_t Size>
struct FixedText {
    char characters[Size] = {};

    constexpr FixedText(const char (&text)[Size]) { std::copy_n(text, Size, characters); } // implicit
    constexpr std::string_view view() const { return {characters, Size - 1}; }
};

} // namespace ringfill
