#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace ringfill {

inline bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

// Numbers as they are typed, without a sign: digits, a point and digits, e and a power of ten. No locale.

/// How many bytes at the begin of a text are such a number: 12, .5, 12., 1.2e3; 0: none.
std::size_t number_length(std::string_view text);

/// A number of at most 15 digits and a power of ten within ±22; nothing for a longer one.
std::optional<double> short_number(std::string_view typed);

/// The nearest floating-point number, whatever the length; infinite past all of them.
double nearest_number(std::string_view typed);

/// A whole number of digits alone; nothing for another text, or past 18 digits.
std::optional<std::int64_t> whole_number(std::string_view digits);

} // namespace ringfill
