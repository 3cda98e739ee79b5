#include <ringfill/units/measure.hpp>

#include <charconv>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/units/typed_text.hpp>
#include <ringfill/units/unit.hpp>

namespace ringfill {
namespace {

constexpr std::size_t longest_text = 200;

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

void skip_blanks(std::string_view& rest) {
    while (!rest.empty() && rest.front() == ' ')
        rest.remove_prefix(1);
}

/// A number without sign at the front of a text: digits, point, exponent. Takes it off.
std::optional<double> take_decimal(std::string_view& rest) {
    if (rest.empty() || (!is_digit(rest.front()) && rest.front() != '.'))
        return std::nullopt;
    double number = 0;
    const auto [end, error] = std::from_chars(rest.data(), rest.data() + rest.size(), number);
    if (error != std::errc() || !std::isfinite(number))
        return std::nullopt;
    rest.remove_prefix(static_cast<std::size_t>(end - rest.data()));
    return number;
}

std::optional<double> take_whole(std::string_view& rest) {
    const std::size_t digits = std::min(rest.find_first_not_of("0123456789"), rest.size());
    double number = 0;
    if (digits == 0 || digits > 9)
        return std::nullopt;
    std::from_chars(rest.data(), rest.data() + digits, number);
    rest.remove_prefix(digits);
    return number;
}

/// A fraction at the front of a text, n/d with d over 0. Takes it off only if it is one.
std::optional<double> take_fraction(std::string_view& rest) {
    std::string_view ahead = rest;
    const auto numerator = take_whole(ahead);
    skip_blanks(ahead);
    if (!numerator || ahead.empty() || ahead.front() != '/')
        return std::nullopt;
    ahead.remove_prefix(1);
    skip_blanks(ahead);
    const auto denominator = take_whole(ahead);
    if (!denominator || *denominator == 0)
        return std::nullopt;
    rest = ahead;
    return *numerator / *denominator;
}

/// A decimal, a fraction, or a whole number and a fraction joined by a dash or a blank.
std::optional<double> take_number(std::string_view& rest) {
    if (const auto fraction = take_fraction(rest))
        return fraction;
    const std::string_view before = rest;
    const auto number = take_decimal(rest);
    if (!number)
        return std::nullopt;
    const std::string_view typed = before.substr(0, before.size() - rest.size());
    if (typed.find_first_not_of("0123456789") != std::string_view::npos)
        return number;
    std::string_view ahead = rest;
    skip_blanks(ahead);
    if (!ahead.empty() && ahead.front() == '-')
        ahead.remove_prefix(1);
    skip_blanks(ahead);
    if (ahead.size() < rest.size())
        if (const auto fraction = take_fraction(ahead)) {
            rest = ahead;
            return *number + *fraction;
        }
    return number;
}

/// The text at the front that stands for a unit: up to the next blank, or up to the next digit if that is
/// what makes it a unit of the kind (1ft6in).
std::string_view take_symbol(std::string_view& rest, Kind kind) {
    std::string_view symbol = rest.substr(0, rest.find(' '));
    if (const std::string_view letters = symbol.substr(0, symbol.find_first_of("0123456789", 1));
        !find_unit(symbol, kind) && find_unit(letters, kind))
        symbol = letters;
    rest.remove_prefix(symbol.size());
    return symbol;
}

std::string example_of(Kind kind) {
    const std::string_view words = kind_in_words(kind);
    const std::size_t such = words.find("such as ");
    return such == std::string_view::npos ? std::string(words) : std::string(words.substr(such + 8));
}

NotMeasured no_number(std::string_view typed, Kind kind) {
    return {typed.empty() ? "is empty" : "does not begin with a number",
            fmt::format("write {}", example_of(kind))};
}

NotMeasured no_unit(std::string_view typed, double number, Kind kind) {
    const std::string shown = printable(typed, 40);
    if (kind == Kind::length)
        return {"has no unit", fmt::format(R"(write "{0} mm" or "{0} in")", shown), number};
    return {"has no unit", fmt::format(R"(write "{} {}")", shown, symbols_of(kind).front())};
}

NotMeasured not_this_unit(std::string_view symbol, Kind kind) {
    const std::string shown = in_quotes(symbol);
    if (find_unit(symbol))
        return {fmt::format("has the unit {}, which does not measure {}", shown, kind_in_words(kind)),
                fmt::format("write {}", example_of(kind))};
    return {fmt::format("has the unit {}, which is not known", shown), suggest(symbol, symbols_of(kind))};
}

/// The fault of what stands after a number where only a unit may stand.
NotMeasured wrong_after_number(std::string_view typed, std::string_view rest, Kind kind) {
    if (rest.front() == ',')
        return {"has a comma", "write decimals with a point and no digit groups: \"1250.5 mm\""};
    if (rest.front() == '/' && typed.find("/0") != std::string_view::npos)
        return {"has a fraction over 0", fmt::format("write {}", example_of(kind))};
    std::string_view ahead = rest;
    return not_this_unit(take_symbol(ahead, kind), kind);
}

struct Part {
    double value = 0; ///< in SI, without the zero of a temperature scale
    Unit unit = {};
};

std::variant<Part, NotMeasured> take_part(std::string_view typed, std::string_view& rest, Kind kind) {
    const auto number = take_number(rest);
    if (!number)
        return no_number(typed, kind);
    skip_blanks(rest);
    if (rest.empty())
        return no_unit(typed, *number, kind);
    std::string_view ahead = rest;
    const auto unit = find_unit(take_symbol(ahead, kind), kind);
    if (!unit)
        return wrong_after_number(typed, rest, kind);
    rest = ahead;
    skip_blanks(rest);
    return Part{*number * unit->factor, *unit};
}

} // namespace

std::variant<double, NotMeasured> measure(std::string_view text, Kind kind) {
    if (text.size() > longest_text)
        return NotMeasured{"is too long for a quantity", fmt::format("write {}", example_of(kind))};
    const std::string plain = plain_signs(text);
    std::string_view rest = plain;
    const bool negative = !rest.empty() && rest.front() == '-';
    if (!rest.empty() && (rest.front() == '-' || rest.front() == '+'))
        rest.remove_prefix(1);
    skip_blanks(rest);

    const auto first = take_part(plain, rest, kind);
    if (const auto* fault = std::get_if<NotMeasured>(&first))
        return *fault;
    Part sum = std::get<Part>(first);
    const double zero = sum.unit.zero;
    while (!rest.empty()) {
        const auto next = take_part(plain, rest, kind);
        const Part* part = std::get_if<Part>(&next);
        if (!part || kind == Kind::temperature || part->unit.factor >= sum.unit.factor)
            return NotMeasured{"goes on after the unit",
                               fmt::format("write one quantity: {}", example_of(kind))};
        sum = {sum.value + part->value, part->unit};
    }
    const double value = (negative ? -sum.value : sum.value) + zero;
    if (!std::isfinite(value))
        return NotMeasured{"is too large", fmt::format("write {}", example_of(kind))};
    return value;
}

} // namespace ringfill
