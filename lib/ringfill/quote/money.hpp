#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace ringfill {

/// An amount in the smallest unit of its currency; its exponent says how many decimals that is. Not negative.
using Minor = std::int64_t;

/// The largest amount: 15 digits, so that floating point and spreadsheets hold it exactly too.
inline constexpr Minor most_minor = 999'999'999'999'999;
/// The largest product that is rounded: whole numbers up to here are exact in floating point (2^53).
inline constexpr std::int64_t most_product = 9'000'000'000'000'000;

/// n times p over d, rounded to a whole number, halves to the even one; exact. Nothing when the product is
/// over most_product or the result over most_minor. Throws std::logic_error for what is negative and for a d
/// under 1.
std::optional<Minor> half_even(std::int64_t n, std::int64_t p, std::int64_t d);

/// A share p/d in its lowest terms, so that a large amount's share is still an exact product. p is not
/// negative, d is over 0.
std::pair<std::int64_t, std::int64_t> lowest_terms(std::int64_t p, std::int64_t d);

/// The sum; nothing when it is over most_minor. Throws std::logic_error for what is negative.
std::optional<Minor> sum_of(const std::vector<Minor>& amounts);

/// An amount with the decimals of its currency: 1234.50, 1235, 1.235.
std::string money_text(Minor amount, int exponent);

/// A price may have so many decimals more than its currency.
inline constexpr int price_decimals_more = 2;
/// What a thousandth of a quantity times a hundredth of the smallest unit is divided by to give the latter.
inline constexpr std::int64_t line_parts = 100'000;

} // namespace ringfill
