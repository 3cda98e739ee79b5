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

constexpr std::array exact_powers = {1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,  1e8,  1e9,  1e10, 1e11,
                                     1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

} // namespace

std::size_t number_length(std::string_view text) {
    std::size_t digits = count_digits(text);
    std::size_t end = digits;
    if (text.substr(end).starts_with('.')) {
        const std::size_t behind = count_digits(text.substr(end + 1));
        digits += behind;
        end += 1 + behind;
    }
    if (digits == 0)
        return 0;
    if (const char sign = end < text.size() ? text[end] : ' '; sign != 'e' && sign != 'E')
        return end;
    const bool is_signed = end + 1 < text.size() && (text[end + 1] == '+' || text[end + 1] == '-');
    const std::size_t power = end + (is_signed ? 2 : 1);
    const std::size_t size = power < text.size() ? count_digits(text.substr(power)) : 0;
    return size > 0 ? power + size : end;
}

std::optional<double> short_number(std::string_view typed) {
    constexpr std::size_t most_digits = 15;
    constexpr int largest_power = 22;
    std::int64_t mantissa = 0;
    std::size_t digits = 0;
    int power = 0;
    bool is_behind_point = false;
    std::size_t i = 0;
    for (; i < typed.size() && typed[i] != 'e' && typed[i] != 'E'; ++i) {
        if (typed[i] == '.') {
            is_behind_point = true;
            continue;
        }
        if (++digits > most_digits)
            return std::nullopt;
        mantissa = 10 * mantissa + (typed[i] - '0');
        power -= is_behind_point ? 1 : 0;
    }
    if (i < typed.size()) {
        const bool is_below_one = typed[++i] == '-';
        i += is_below_one || typed[i] == '+' ? 1 : 0;
        const auto typed_power = whole_number(typed.substr(i));
        if (!typed_power || *typed_power > 2 * largest_power)
            return std::nullopt;
        power += static_cast<int>(is_below_one ? -*typed_power : *typed_power);
    }
    if (std::abs(power) > largest_power)
        return std::nullopt;
    const double scale = exact_powers[static_cast<std::size_t>(std::abs(power))];
    return power < 0 ? static_cast<double>(mantissa) / scale : static_cast<double>(mantissa) * scale;
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
