#include <ringfill/units/measure.hpp>

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

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

/// Takes a sign off the front of a text, with the blanks around it; only the blanks when it is not there.
bool take_sign(std::string_view& rest, char sign) {
    skip_blanks(rest);
    if (!rest.starts_with(sign))
        return false;
    rest.remove_prefix(1);
    skip_blanks(rest);
    return true;
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
    const auto denominator = numerator && take_sign(ahead, '/') ? take_whole(ahead) : std::nullopt;
    if (!denominator || *denominator == 0)
        return std::nullopt;
    rest = ahead;
    return *numerator / *denominator;
}

/// A decimal, a fraction, or a whole number and a fraction joined by a dash or a blank. One too large to hold
/// is infinite, one too small is 0.
std::optional<double> take_number(std::string_view& rest) {
    if (const auto fraction = take_fraction(rest))
        return fraction;
    const std::string_view typed = rest.substr(0, number_length(rest));
    if (typed.empty())
        return std::nullopt;
    rest.remove_prefix(typed.size());
    const double number = nearest_number(typed);
    std::string_view ahead = rest;
    take_sign(ahead, '-');
    if (ahead.size() == rest.size() || typed.find_first_not_of("0123456789") != std::string_view::npos)
        return number;
    const auto fraction = take_fraction(ahead);
    if (fraction)
        rest = ahead;
    return number + fraction.value_or(0);
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

/// The kind without its example, "a length", and the example alone, or all of it when it has none.
std::pair<std::string_view, std::string_view> name_and_example(Kind kind) {
    constexpr std::string_view between = " such as ";
    const std::string_view words = kind_in_words(kind);
    const std::size_t end = words.find(between);
    return {words.substr(0, end), end == std::string_view::npos ? words : words.substr(end + between.size())};
}

/// A fault whose remedy is to write a quantity like the example of its kind.
NotMeasured like_the_example(std::string reason, Kind kind, std::string_view write = "write ") {
    return {std::move(reason), fmt::format("{}{}", write, name_and_example(kind).second)};
}

/// What to write instead of an unknown unit: the nearest one, or all of the kind, each in one spelling.
std::string known_units(std::string_view symbol, Kind kind) {
    if (nearest(symbol, symbols_of(kind)))
        return suggest(symbol, symbols_of(kind));
    std::vector<std::string> told;
    for (const Unit& unit : units_of(kind))
        told.emplace_back(unit.symbol());
    return suggest(symbol, told);
}

NotMeasured no_unit(std::string_view typed, double number, Kind kind) {
    const std::string shown = printable(typed, 40);
    if (kind == Kind::length)
        return {"has no unit", fmt::format(R"(write "{0} mm" or "{0} in")", shown), number};
    return {"has no unit", fmt::format(R"(write "{} {}")", shown, units_of(kind).front().symbol())};
}

/// Whether a text goes on with a fraction over 0, or with the end of one: "-1/0", "/ 0".
bool is_over_zero(std::string_view rest) {
    rest.remove_prefix(std::min(rest.find_first_not_of("- "), rest.size()));
    take_whole(rest);
    return take_sign(rest, '/') && take_whole(rest) == 0.0;
}

/// The fault of what stands after a number where only a unit may stand.
NotMeasured wrong_after_number(std::string_view rest, Kind kind) {
    if (rest.front() == ',')
        return {"has a comma", fmt::format("write decimals with a point and no digit groups: \"1250.5 {}\"",
                                           units_of(kind).front().symbol())};
    if (is_over_zero(rest))
        return like_the_example("has a fraction over 0", kind);
    if (is_digit(rest.front()) || (rest.front() == '-' && rest.size() > 1 && is_digit(rest[1])))
        return like_the_example("has two numbers before its unit", kind, "write one number: ");
    const std::string_view symbol = take_symbol(rest, kind);
    const std::string shown = in_quotes(symbol);
    if (find_unit(symbol))
        return like_the_example(
            fmt::format("has the unit {}, which does not measure {}", shown, name_and_example(kind).first),
            kind);
    return {fmt::format("has the unit {}, which is not known", shown), known_units(symbol, kind)};
}

struct Part {
    double value = 0; ///< in SI, without the zero of a temperature scale
    const Unit* unit = nullptr;
};

std::variant<Part, NotMeasured> take_part(std::string_view typed, std::string_view& rest, Kind kind) {
    const auto number = take_number(rest);
    if (!number)
        return like_the_example(typed.empty() ? "is empty" : "does not begin with a number", kind);
    if (!std::isfinite(*number))
        return like_the_example("is too large", kind);
    skip_blanks(rest);
    if (rest.empty())
        return no_unit(typed, *number, kind);
    std::string_view ahead = rest;
    const Unit* unit = find_unit(take_symbol(ahead, kind), kind);
    if (!unit)
        return wrong_after_number(rest, kind);
    rest = ahead;
    skip_blanks(rest);
    return Part{*number * unit->factor, unit};
}

} // namespace

std::variant<double, NotMeasured> measure(std::string_view text, Kind kind) {
    if (text.size() > longest_text)
        return like_the_example("is too long for a quantity", kind);
    const std::string plain = plain_signs(text);
    std::string_view rest = plain;
    const bool negative = rest.starts_with('-');
    if (negative || rest.starts_with('+'))
        rest.remove_prefix(1);
    skip_blanks(rest);

    auto first = take_part(plain, rest, kind);
    if (auto* fault = std::get_if<NotMeasured>(&first)) {
        if (fault->bare_length && negative)
            fault->bare_length = -*fault->bare_length;
        return *fault;
    }
    auto [sum, unit] = std::get<Part>(first);
    const double zero = unit->zero;
    while (!rest.empty()) {
        if (rest.front() == '-' && kind == Kind::length && unit->factor == factor::foot)
            rest.remove_prefix(1); // 1'-6"
        const auto next = take_part(plain, rest, kind);
        const Part* part = std::get_if<Part>(&next);
        if (!part || kind == Kind::temperature || part->unit->factor >= unit->factor)
            return like_the_example("goes on after the unit", kind, "write one quantity: ");
        sum += part->value;
        unit = part->unit;
    }
    const double value = (negative ? -sum : sum) + zero;
    if (!std::isfinite(value))
        return like_the_example("is too large", kind);
    return kind == Kind::temperature ? factor::settled_kelvin(value) : value;
}

} // namespace ringfill
