#include <ringfill/units/decimal.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

#include <ringfill/document/number_text.hpp>

namespace ringfill {
namespace {

constexpr std::int64_t most_digits = 999'999'999'999'999;

/// Digits appended one by one; false when they are more than it holds.
bool append(Decimal& number, std::string_view digits) {
    for (const char c : digits) {
        if (number.digits > (most_digits - (c - '0')) / 10)
            return false;
        number.digits = number.digits * 10 + (c - '0');
    }
    return true;
}

} // namespace

std::optional<Decimal> decimal_of(std::string_view text) {
    if (text.empty() || !is_digit(text.front()) || number_length(text) != text.size())
        return std::nullopt;
    auto [whole, fraction, power] = typed_number(text);
    if (!power || *power > std::numeric_limits<int>::max() ||
        text.substr(whole.size()).starts_with('.') == fraction.empty())
        return std::nullopt;
    while (fraction.ends_with('0'))
        fraction.remove_suffix(1);
    Decimal number;
    if (!append(number, whole) || !append(number, fraction))
        return std::nullopt;
    if (number.digits == 0)
        return Decimal{};
    std::int64_t decimals = static_cast<std::int64_t>(fraction.size()) - *power;
    for (; decimals > 0 && number.digits % 10 == 0; --decimals)
        number.digits /= 10;
    for (; decimals < 0; ++decimals)
        if (!append(number, "0"))
            return std::nullopt;
    if (decimals > most_decimals)
        return std::nullopt;
    number.decimals = static_cast<int>(decimals);
    return number;
}

std::optional<std::int64_t> in_parts(const Decimal& number, int decimals) {
    if (number.decimals > decimals)
        return std::nullopt;
    Decimal parts{number.digits};
    for (int more = decimals - number.decimals; more > 0; --more)
        if (!append(parts, "0"))
            return std::nullopt;
    return parts.digits;
}

double as_double(const Decimal& number) {
    return static_cast<double>(number.digits) / std::pow(10.0, number.decimals); // both exact
}

std::string decimal_text(const Decimal& number, int at_least) {
    std::string text = fmt::format("{:0{}}", number.digits, number.decimals + 1);
    const std::size_t point = text.size() - static_cast<std::size_t>(number.decimals);
    text.append(static_cast<std::size_t>(std::max(0, at_least - number.decimals)), '0');
    return point < text.size() ? text.insert(point, 1, '.') : text;
}

} // namespace ringfill
