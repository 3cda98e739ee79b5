#include <ringfill/document/write.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <iterator>
#include <limits>
#include <optional>
#include <stdexcept>

#include <fmt/format.h>

#include <ringfill/document/number_text.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

/// For each byte, whether it is a character of its own that stands in a JSON text as it is.
constexpr std::array<bool, 256> stands_as_it_is = [] {
    std::array<bool, 256> table = {};
    for (std::size_t code = 0x20; code < 0x7F; ++code)
        table[code] = code != '"' && code != '\\';
    return table;
}();

/// Whether eight bytes stand as they are, each bit by bit in one word: none is from 0x7F on, below 0x20, a
/// quote or a backslash.
bool eight_stand(const char* bytes) {
    constexpr std::uint64_t ones = 0x0101'0101'0101'0101;
    std::uint64_t word = 0;
    std::memcpy(&word, bytes, sizeof word);
    const auto below = [](std::uint64_t all, std::uint64_t limit) { return (all - ones * limit) & ~all; };
    const std::uint64_t wrong = word | (word + ones) | below(word, 0x20) | below(word ^ (ones * '"'), 1) |
                                below(word ^ (ones * '\\'), 1);
    return (wrong & (ones * 0x80)) == 0;
}

/// A character as \uXXXX, in two halves where it needs them.
std::string escaped(std::uint32_t code) {
    const std::uint32_t rest = code - 0x10000;
    return code < 0x10000
               ? fmt::format("\\u{:04x}", code)
               : fmt::format("\\u{:04x}\\u{:04x}", 0xD800 + (rest >> 10U), 0xDC00 + (rest & 0x3FFU));
}

/// A number whose scientific form has an exponent from -5 to 14 laid out without one. `digits` are those
/// behind which nothing but zeros follows.
void lay_out(JsonText& out, std::string_view digits, int exponent) {
    constexpr std::string_view zeros = "0.00000000000000";
    const auto whole = static_cast<std::size_t>(std::max(0, exponent + 1));
    if (whole == 0)
        out.append(zeros.substr(0, static_cast<std::size_t>(1 - exponent)));
    out.append(digits.substr(0, whole));
    if (digits.size() < whole)
        out.append(zeros.substr(2, whole - digits.size()));
    if (whole > 0 && digits.size() > whole)
        out.push_back('.');
    if (digits.size() > whole)
        out.append(digits.substr(whole));
}

/// Fifteen digits as one whole number, and the exponent of the first.
struct Fifteen {
    std::int64_t digits = 0;
    int exponent = 0;
};

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

void append_text(JsonText& to, std::string_view text) {
    const std::size_t begin = to.size();
    to.resize(begin + text.size() + 2);
    char* out = to.data() + begin;
    *out++ = '"';
    std::size_t put = 0;
    for (; put + 8 <= text.size() && eight_stand(text.data() + put); put += 8)
        out = std::copy_n(text.data() + put, 8, out);
    for (; put < text.size() && stands_as_it_is[static_cast<unsigned char>(text[put])]; ++put)
        *out++ = text[put];
    *out = '"';
    if (put == text.size())
        return;
    to.resize(begin + 1 + put);
    while (put < text.size()) {
        if (stands_as_it_is[static_cast<unsigned char>(text[put])]) {
            to.push_back(text[put++]);
            continue;
        }
        const Character c = character_at(text, put);
        if (c.code == '"' || c.code == '\\')
            to.push_back('\\');
        if (c.code == '\n' || c.code == '\t')
            to.append(std::string_view(c.code == '\n' ? "\\n" : "\\t"));
        else if (disturbs(c.code))
            to.append(escaped(c.code));
        else
            to.append(text.substr(put, c.bytes));
        put += c.bytes;
    }
    to.push_back('"');
}

void append_number(JsonText& to, double number) {
    if (!std::isfinite(number))
        throw std::logic_error("a number that is not finite reached the result");
    if (std::fabs(number) < 1e15 && number == std::trunc(number)) {
        const fmt::format_int whole(static_cast<std::int64_t>(number));
        to.append(std::string_view(whole.data(), whole.size()));
        return;
    }
    const double size = std::fabs(number);
    const auto at_once = fifteen_at_once(size);
    const Fifteen fifteen = at_once ? *at_once : fifteen_of(size);
    const fmt::format_int digits_of(fifteen.digits);
    const std::string_view digits(digits_of.data(), digits_of.size());
    if (number < 0)
        to.push_back('-');
    if (fifteen.exponent >= -5 && fifteen.exponent <= 14)
        return lay_out(to, digits.substr(0, digits.find_last_not_of('0') + 1), fifteen.exponent);
    const double rounded = nearest_number(fmt::format("{}e{}", digits, fifteen.exponent - 14));
    // the largest of all, rounded up, would be past all numbers
    fmt::format_to(std::back_inserter(to), "{}", std::isfinite(rounded) ? rounded : size);
}

} // namespace ringfill
