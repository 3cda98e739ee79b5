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

/// The power of ten that stands behind an e; nothing when it is too large.
std::optional<int> exponent_of(std::string_view typed) {
    const auto size = whole_number(typed.substr(typed.find_first_of("0123456789")));
    if (!size || *size > std::numeric_limits<int>::max())
        return std::nullopt;
    return static_cast<int>(typed.starts_with('-') ? -*size : *size);
}

} // namespace

std::optional<Decimal> decimal_of(std::string_view text) {
    if (text.empty() || !is_digit(text.front()) || number_length(text) != text.size())
        return std::nullopt;
    const std::size_t power = std::min(text.find_first_of("eE"), text.size());
    const std::size_t point = std::min(text.find('.'), power);
    std::string_view fraction = text.substr(std::min(point + 1, power), power - std::min(point + 1, power));
    const auto exponent = power < text.size() ? exponent_of(text.substr(power + 1)) : 0;
    if (!exponent || (point < power && fraction.empty()))
        return std::nullopt;
    while (fraction.ends_with('0'))
        fraction.remove_suffix(1);
    Decimal number;
    if (!append(number, text.substr(0, point)) || !append(number, fraction))
        return std::nullopt;
    if (number.digits == 0)
        return Decimal{};
    long decimals = static_cast<long>(fraction.size()) - *exponent;
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
