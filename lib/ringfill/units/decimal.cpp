#include <ringfill/units/decimal.hpp>

#include <cmath>
#include <limits>

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

/// The digits that the text begins with; they are taken off it.
std::string_view take_digits(std::string_view& text) {
    std::size_t size = 0;
    while (size < text.size() && is_digit(text[size]))
        ++size;
    const std::string_view digits = text.substr(0, size);
    text.remove_prefix(size);
    return digits;
}

/// The power of ten after an e; nothing when there is none, 0 when the text is at its end.
std::optional<int> exponent_of(std::string_view text) {
    if (text.empty())
        return 0;
    if (text.front() != 'e' && text.front() != 'E')
        return std::nullopt;
    text.remove_prefix(1);
    const bool is_below_one = text.starts_with('-');
    if (is_below_one || text.starts_with('+'))
        text.remove_prefix(1);
    const auto exponent = whole_number(text);
    if (!exponent || *exponent > std::numeric_limits<int>::max())
        return std::nullopt;
    return static_cast<int>(is_below_one ? -*exponent : *exponent);
}

} // namespace

std::optional<Decimal> decimal_of(std::string_view text) {
    Decimal number;
    const std::string_view whole = take_digits(text);
    std::string_view fraction;
    if (text.starts_with('.')) {
        text.remove_prefix(1);
        fraction = take_digits(text);
        if (fraction.empty())
            return std::nullopt;
    }
    const auto exponent = exponent_of(text);
    while (fraction.ends_with('0'))
        fraction.remove_suffix(1);
    if (whole.empty() || !exponent || !append(number, whole) || !append(number, fraction))
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
    std::int64_t parts = number.digits;
    for (int more = decimals - number.decimals; more > 0; --more) {
        if (parts > most_digits / 10)
            return std::nullopt;
        parts *= 10;
    }
    return parts;
}

double as_double(const Decimal& number) {
    return static_cast<double>(number.digits) / std::pow(10.0, number.decimals); // both exact
}

std::string decimal_text(const Decimal& number, int at_least) {
    std::string text = std::to_string(number.digits);
    std::string fraction;
    if (number.decimals > 0) {
        const auto decimals = static_cast<std::size_t>(number.decimals);
        if (text.size() <= decimals)
            text.insert(0, decimals + 1 - text.size(), '0');
        fraction = text.substr(text.size() - decimals);
        text.resize(text.size() - decimals);
    }
    while (fraction.size() < static_cast<std::size_t>(at_least))
        fraction += '0';
    return fraction.empty() ? text : text + '.' + fraction;
}

} // namespace ringfill
