#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace ringfill {

inline bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// Powers of ten, exact as a double, and in a long double of 64 digits.
inline constexpr std::array powers_of_ten = {1e0L,  1e1L,  1e2L,  1e3L,  1e4L,  1e5L,  1e6L,  1e7L,
                                             1e8L,  1e9L,  1e10L, 1e11L, 1e12L, 1e13L, 1e14L, 1e15L,
                                             1e16L, 1e17L, 1e18L, 1e19L, 1e20L, 1e21L, 1e22L};

// Numbers as they are typed, without a sign: digits, a point and digits, e and a power of ten. No locale.

/// How many bytes at the begin of a text are such a number: 12, .5, 12., 1.2e3; 0: none.
std::size_t number_length(std::string_view text);

/// The parts of such a number.
struct TypedNumber {
    std::string_view whole;
    std::string_view fraction;         ///< the digits behind the point
    std::optional<std::int64_t> power; ///< of ten; 0 without one, nothing past 18 digits
};
TypedNumber typed_number(std::string_view typed);

/// A number of at most 15 digits and a power of ten within ±22; nothing for a longer one.
std::optional<double> short_number(std::string_view typed);

/// The nearest floating-point number, whatever the length; infinite past all of them.
double nearest_number(std::string_view typed);

/// A whole number of digits alone; nothing for another text, or past 18 digits.
std::optional<std::int64_t> whole_number(std::string_view digits);

} // namespace ringfill
