#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace ringfill {

/// A decimal number as it was written, exact: digits / 10^decimals, not negative, without zeros at its end.
struct Decimal {
    std::int64_t digits = 0;
    int decimals = 0;

    bool operator==(const Decimal&) const = default;
};

/// The most digits and decimals that a Decimal holds.
inline constexpr int most_decimals = 15;

/// A number as JSON has it (12, 4.20, 1e3), exact. Nothing for what is negative, no number, or longer than 15
/// digits before or after the point.
std::optional<Decimal> decimal_of(std::string_view text);

/// How many units of 10^-decimals it is; nothing when it has more decimals, or is too large for 15 digits.
std::optional<std::int64_t> in_parts(const Decimal& number, int decimals);

/// The nearest floating-point number.
double as_double(const Decimal& number);

/// With at least so many decimals: 4.2 with two is "4.20".
std::string decimal_text(const Decimal& number, int at_least = 0);

} // namespace ringfill
