#include <ringfill/document/put_plain.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <limits>
#include <optional>
#include <stdexcept>

#include <fmt/format.h>

#include <ringfill/document/number_text.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

/// A character as \uXXXX, in two halves where it needs them.
void write_escaped(TextEnd& out, std::uint32_t code) {
    if (code < 0x10000) {
        out.put(fmt::format("\\u{:04x}", code));
        return;
    }
    const std::uint32_t rest = code - 0x10000;
    out.put(fmt::format("\\u{:04x}\\u{:04x}", 0xD800 + (rest >> 10U), 0xDC00 + (rest & 0x3FFU)));
}

/// A number whose scientific form has an exponent from -5 to 14 laid out without one. `digits` are those
/// behind which nothing but zeros follows.
void lay_out(TextEnd& out, std::string_view digits, int exponent) {
    const auto whole = static_cast<std::size_t>(std::max(0, exponent + 1));
    if (whole == 0) {
        out.put("0.");
        out.put(static_cast<std::size_t>(-exponent - 1), '0');
        out.put(digits);
    } else if (digits.size() <= whole) {
        out.put(digits);
        out.put(whole - digits.size(), '0');
    } else {
        out.put(digits.substr(0, whole));
        out.put('.');
        out.put(digits.substr(whole));
    }
}

/// Fifteen digits as one whole number, and the exponent of the first.
struct Fifteen {
    std::int64_t digits = 0;
    int exponent = 0;
};

constexpr int highest_power = 20;

/// Powers of ten, exact in a long double of 64 digits.
constexpr std::array<long double, highest_power + 1> powers_of_ten = [] {
    std::array<long double, highest_power + 1> powers = {};
    long double power = 1;
    for (long double& one : powers) {
        one = power;
        power *= 10;
    }
    return powers;
}();

/// The digits of a number from 1e-5 to 1e15 by one multiplication; nothing for another number, nor where what
/// is cut off is so near to a half that the product's rounding (under 1e-4) might turn the last digit.
std::optional<Fifteen> fifteen_at_once(double number) {
    constexpr std::int64_t first_of_sixteen = 1'000'000'000'000'000;
    constexpr long double doubtful = 1e-3L;
    if (std::numeric_limits<long double>::digits < 64 || !(number >= 1e-5 && number < 1e15))
        return std::nullopt;
    std::uint64_t bits = 0;
    std::memcpy(&bits, &number, sizeof bits);
    const int log2 = static_cast<int>(bits >> 52U) - 1023;
    Fifteen result{0, (log2 * 78'913) >> 18}; // log2 × log10(2), rounded down: the exponent or one less
    const auto scaled = [&] {
        return static_cast<long double>(number) *
               powers_of_ten[static_cast<std::size_t>(14 - result.exponent)];
    };
    if (scaled() >= static_cast<long double>(first_of_sixteen))
        ++result.exponent;
    result.digits = static_cast<std::int64_t>(scaled());
    const long double cut_off = scaled() - static_cast<long double>(result.digits);
    if (std::fabs(cut_off - 0.5L) < doubtful)
        return std::nullopt;
    result.digits += cut_off > 0.5L ? 1 : 0;
    if (result.digits == first_of_sixteen)
        return Fifteen{first_of_sixteen / 10, result.exponent + 1};
    return result;
}

/// The same of any number that is not 0, by the format library.
Fifteen fifteen_of(double number) {
    std::string signs = fmt::format("{:.14e}", number); // d.dddddddddddddde±dd
    signs.erase(1, 1);
    const auto power = static_cast<int>(whole_number(std::string_view(signs).substr(17)).value());
    return {whole_number(std::string_view(signs).substr(0, 15)).value(), signs[16] == '-' ? -power : power};
}

} // namespace

void put_text(TextEnd& out, std::string_view text) {
    if (out.put_quoted(text))
        return;
    out.put('"');
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t begin = i;
        while (i < text.size() && as_it_is::stands[static_cast<unsigned char>(text[i])])
            ++i;
        out.put(text.substr(begin, i - begin));
        if (i == text.size())
            break;
        const Character c = character_at(text, i);
        if (c.code == '"' || c.code == '\\')
            out.put('\\');
        if (c.code == '\n')
            out.put("\\n");
        else if (c.code == '\t')
            out.put("\\t");
        else if (disturbs(c.code))
            write_escaped(out, c.code);
        else
            out.put(text.substr(i, c.bytes));
        i += c.bytes;
    }
    out.put('"');
}

void put_number(TextEnd& out, double number) {
    if (!std::isfinite(number))
        throw std::logic_error("a number that is not finite reached the result");
    if (std::fabs(number) < 1e15 && number == std::trunc(number)) {
        const fmt::format_int whole(static_cast<std::int64_t>(number));
        out.put(std::string_view(whole.data(), whole.size()));
        return;
    }
    const double size = std::fabs(number);
    const auto at_once = fifteen_at_once(size);
    const Fifteen fifteen = at_once ? *at_once : fifteen_of(size);
    const fmt::format_int digits_of(fifteen.digits);
    const std::string_view digits(digits_of.data(), digits_of.size());
    if (number < 0)
        out.put('-');
    if (fifteen.exponent < -5 || fifteen.exponent > 14) {
        const double rounded = nearest_number(fmt::format("{}e{}", digits, fifteen.exponent - 14));
        // the largest of all, rounded up, would be past all numbers
        out.put(fmt::format("{}", std::isfinite(rounded) ? rounded : size));
        return;
    }
    lay_out(out, digits.substr(0, digits.find_last_not_of('0') + 1), fifteen.exponent);
}

} // namespace ringfill
