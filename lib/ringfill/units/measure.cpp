#include <ringfill/units/measure.hpp>

#include <algorithm>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include <ringfill/document/number_text.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/typed_text.hpp>
#include <ringfill/units/unit.hpp>

namespace ringfill {
namespace {

constexpr std::size_t longest_text = 200;

void skip_blanks(std::string_view& rest) {
    while (!rest.empty() && rest.front() == ' ')
        rest.remove_prefix(1);
}

/// A number without sign at the front of a text: digits, point, exponent. Takes it off. One too large to hold
/// is infinite, one too small is 0.
std::optional<double> take_decimal(std::string_view& rest) {
    const std::string_view typed = rest.substr(0, number_length(rest));
    if (typed.empty())
        return std::nullopt;
    rest.remove_prefix(typed.size());
    return nearest_number(typed);
}

std::optional<double> take_whole(std::string_view& rest) {
    const std::size_t digits = std::min(rest.find_first_not_of("0123456789"), rest.size());
    const auto number = digits > 9 ? std::nullopt : whole_number(rest.substr(0, digits));
    if (!number)
        return std::nullopt;
    rest.remove_prefix(digits);
    return static_cast<double>(*number);
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

/// The text at the front that stands for a unit: up to the next blank, or up to the next digit or dash if
/// that is what makes it a unit of the kind (1ft6in, 1'-6").
std::string_view take_symbol(std::string_view& rest, Kind kind) {
    std::string_view symbol = rest.substr(0, rest.find(' '));
    if (const std::string_view letters = symbol.substr(0, symbol.find_first_of("0123456789-", 1));
        !find_unit(symbol) && find_unit(letters, kind))
        symbol = letters;
    rest.remove_prefix(symbol.size());
    return symbol;
}

std::string example_of(Kind kind) {
    const std::string_view words = kind_in_words(kind);
    const std::size_t such = words.find("such as ");
    return such == std::string_view::npos ? std::string(words) : std::string(words.substr(such + 8));
}

/// The kind without its example: "a length".
std::string_view name_of(Kind kind) {
    const std::string_view words = kind_in_words(kind);
    return words.substr(0, words.find(" such as "));
}

/// What to write instead of an unknown unit: the nearest one, or all of the kind, each in one spelling.
std::string known_units(std::string_view symbol, Kind kind) {
    if (nearest(symbol, symbols_of(kind)))
        return suggest(symbol, symbols_of(kind));
    std::vector<std::string> told;
    std::vector<std::pair<double, double>> scales;
    for (const std::string& known : symbols_of(kind)) {
        const Unit unit = find_unit(known, kind).value();
        if (const std::pair scale(unit.factor, unit.zero);
            std::find(scales.begin(), scales.end(), scale) == scales.end()) {
            scales.push_back(scale);
            told.push_back(known);
        }
    }
    return suggest(symbol, told);
}

NotMeasured no_number(std::string_view typed, Kind kind) {
    return {typed.empty() ? "is empty" : "does not begin with a number",
            fmt::format("write {}", example_of(kind))};
}

NotMeasured too_large(Kind kind) {
    return {"is too large", fmt::format("write {}", example_of(kind))};
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
        return {fmt::format("has the unit {}, which does not measure {}", shown, name_of(kind)),
                fmt::format("write {}", example_of(kind))};
    return {fmt::format("has the unit {}, which is not known", shown), known_units(symbol, kind)};
}

/// Whether a text goes on with a fraction over 0, or with the end of one: "-1/0", "/ 0".
bool is_over_zero(std::string_view rest) {
    rest.remove_prefix(std::min(rest.find_first_not_of("- "), rest.size()));
    take_whole(rest);
    skip_blanks(rest);
    if (rest.empty() || rest.front() != '/')
        return false;
    rest.remove_prefix(1);
    skip_blanks(rest);
    return take_whole(rest) == 0.0;
}

/// The fault of what stands after a number where only a unit may stand.
NotMeasured wrong_after_number(std::string_view rest, Kind kind) {
    if (rest.front() == ',')
        return {"has a comma", fmt::format("write decimals with a point and no digit groups: \"1250.5 {}\"",
                                           symbols_of(kind).front())};
    if (is_over_zero(rest))
        return {"has a fraction over 0", fmt::format("write {}", example_of(kind))};
    if (is_digit(rest.front()) || (rest.front() == '-' && rest.size() > 1 && is_digit(rest[1])))
        return {"has two numbers before its unit", fmt::format("write one number: {}", example_of(kind))};
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
    if (!std::isfinite(*number))
        return too_large(kind);
    skip_blanks(rest);
    if (rest.empty())
        return no_unit(typed, *number, kind);
    std::string_view ahead = rest;
    const auto unit = find_unit(take_symbol(ahead, kind), kind);
    if (!unit)
        return wrong_after_number(rest, kind);
    rest = ahead;
    skip_blanks(rest);
    return Part{*number * unit->factor, *unit};
}

NotMeasured signed_fault(NotMeasured fault, bool negative) {
    if (fault.bare_length && negative)
        fault.bare_length = -*fault.bare_length;
    return fault;
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
        return signed_fault(*fault, negative);
    Part sum = std::get<Part>(first);
    const double zero = sum.unit.zero;
    while (!rest.empty()) {
        if (rest.front() == '-' && sum.unit.kind == Kind::length && sum.unit.factor == factor::foot)
            rest.remove_prefix(1); // 1'-6"
        const auto next = take_part(plain, rest, kind);
        const Part* part = std::get_if<Part>(&next);
        if (!part || kind == Kind::temperature || part->unit.factor >= sum.unit.factor)
            return NotMeasured{"goes on after the unit",
                               fmt::format("write one quantity: {}", example_of(kind))};
        sum = {sum.value + part->value, part->unit};
    }
    const double value = (negative ? -sum.value : sum.value) + zero;
    if (!std::isfinite(value))
        return too_large(kind);
    return kind == Kind::temperature ? factor::settled_kelvin(value) : value;
}

} // namespace ringfill
