#include <ringfill/document/number_text.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <locale>
#include <sstream>
#include <string>

namespace ringfill {
namespace {

std::size_t count_digits(std::string_view text) {
    return static_cast<std::size_t>(std::find_if_not(text.begin(), text.end(), is_digit) - text.begin());
}

} // namespace

std::size_t number_length(std::string_view text) {
    const std::size_t whole = count_digits(text);
    std::size_t end = whole;
    if (text.substr(end).starts_with('.'))
        end += 1 + count_digits(text.substr(end + 1));
    if (whole == 0 && end < 2)
        return 0;
    const std::string_view power = text.substr(end);
    if (!power.starts_with('e') && !power.starts_with('E'))
        return end;
    const std::size_t first = power.size() > 1 && (power[1] == '+' || power[1] == '-') ? 2 : 1;
    const std::size_t size = count_digits(power.substr(first));
    return size > 0 ? end + first + size : end;
}

TypedNumber typed_number(std::string_view typed) {
    const auto* const power =
        std::find_if(typed.begin(), typed.end(), [](char c) { return c == 'e' || c == 'E'; });
    const auto* const point = std::find(typed.begin(), power, '.');
    TypedNumber number{{typed.begin(), point}, {point == power ? power : point + 1, power}, 0};
    if (power != typed.end()) {
        std::string_view digits(power + 1, typed.end());
        const bool is_below_one = digits.starts_with('-');
        digits.remove_prefix(is_below_one || digits.starts_with('+') ? 1 : 0);
        number.power = whole_number(digits);
        if (number.power && is_below_one)
            number.power = -*number.power;
    }
    return number;
}

std::optional<double> short_number(std::string_view typed) {
    constexpr std::size_t most_digits = 15;
    const auto [whole, fraction, power] = typed_number(typed);
    if (whole.size() + fraction.size() > most_digits || !power)
        return std::nullopt;
    std::int64_t mantissa = 0;
    for (const std::string_view digits : {whole, fraction})
        for (const char digit : digits)
            mantissa = 10 * mantissa + (digit - '0');
    const std::int64_t decimals = static_cast<std::int64_t>(fraction.size()) - *power;
    const auto scale = static_cast<std::size_t>(std::abs(decimals));
    if (scale >= powers_of_ten.size())
        return std::nullopt;
    return decimals > 0 ? static_cast<double>(mantissa) / static_cast<double>(powers_of_ten[scale])
                        : static_cast<double>(mantissa) * static_cast<double>(powers_of_ten[scale]);
}

double nearest_number(std::string_view typed) {
    if (const auto short_one = short_number(typed))
        return *short_one;
    std::istringstream text{std::string(typed)};
    text.imbue(std::locale::classic());
    double number = 0;
    return text >> number ? number : HUGE_VAL;
}

std::optional<std::int64_t> whole_number(std::string_view digits) {
    constexpr std::size_t most_digits = 18;
    if (digits.empty() || count_digits(digits) != digits.size())
        return std::nullopt;
    digits.remove_prefix(std::min(digits.find_first_not_of('0'), digits.size()));
    if (digits.size() > most_digits)
        return std::nullopt;
    std::int64_t number = 0;
    for (const char digit : digits)
        number = 10 * number + (digit - '0');
    return number;
}

} // namespace ringfill
