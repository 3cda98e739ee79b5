#include <ringfill/units/measure_pattern.hpp>

#include <cstdint>
#include <functional>
#include <map>
#include <set>
#include <stdexcept>
#include <vector>

#include <fmt/format.h>

#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/typed_text.hpp>
#include <ringfill/units/unit.hpp>

namespace ringfill {
namespace {

/// A character that stands for itself in a regular expression, in ASCII.
std::string literal(std::uint32_t code) {
    if (code >= 0x80 || code < 0x20)
        return fmt::format("\\u{:04X}", code);
    const char plain = static_cast<char>(code);
    const bool special = std::string_view(R"(^$\.*+?()[]{}|-)").find(plain) != std::string_view::npos;
    return fmt::format("{}{}", special ? "\\" : "", plain);
}

std::string literal(std::string_view utf8) {
    std::string pattern;
    for (std::size_t i = 0; i < utf8.size(); i += character_at(utf8, i).bytes)
        pattern += literal(character_at(utf8, i).code);
    return pattern;
}

/// One of the characters that are typed for a plain sign, or of those that stand for a fraction when it is
/// empty; neighbours are written as a range.
std::string one_of(std::string_view plain) {
    std::string typed(plain);
    for (const Sign& sign : typed_signs)
        if (plain.empty() ? sign.plain.size() > 1 : sign.plain == plain)
            typed += sign.typed;
    std::set<std::uint32_t> codes;
    for (std::size_t i = 0; i < typed.size(); i += character_at(typed, i).bytes)
        codes.insert(character_at(typed, i).code);
    std::string set;
    for (const std::uint32_t code : codes) {
        if (codes.contains(code - 1) && codes.contains(code + 1))
            continue;
        set += fmt::format("{}{}", codes.contains(code - 1) ? "-" : "", literal(code));
    }
    return fmt::format("[{}]", set);
}

/// The signs, and the number that they make: a decimal, a fraction, or a whole number and a fraction.
struct Signs {
    std::string blank = one_of(" ");
    std::string dash = one_of("-");
    std::string slash = one_of("/");
    std::string character = one_of("");

    std::string number() const {
        const std::string blanks = blank + "*";
        const std::string over =
            fmt::format("[0-9]{{1,9}}{0}{1}{0}(?!0+(?![0-9]))[0-9]{{1,9}}", blanks, slash);
        const std::string joined = fmt::format("[0-9]+(?:(?:{0}+{2}?{1}|{2}{1}){3}|{1}{2}?{1}{4})", blank,
                                               blanks, dash, over, character);
        const std::string decimal =
            fmt::format(R"((?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:[eE](?:\+|{})?[0-9]+)?)", dash);
        return fmt::format("(?:{}|{}|{}|{})", over, character, joined, decimal);
    }
    /// Where a unit ends.
    std::string end() const { return fmt::format("(?=$|{}|{}|{}|[0-9])", blank, dash, character); }
};

/// The spellings of the units of a kind, the largest unit first.
std::map<double, std::vector<std::string>, std::greater<>> units_by_size(Kind kind) {
    std::map<double, std::vector<std::string>, std::greater<>> sizes;
    for (const std::string& symbol : symbols_of(kind))
        // A digit right behind a unit that holds one (m3) would belong to the unit.
        sizes[find_unit(symbol, kind)->factor].push_back(
            literal(symbol) + (symbol.find_first_of("0123456789") < symbol.size() ? "(?![0-9])" : ""));
    return sizes;
}

} // namespace

std::string measure_pattern(Kind kind, bool may_be_negative) {
    const auto sizes = units_by_size(kind);
    if (sizes.empty())
        throw std::logic_error("this kind of field has no unit");
    const Signs signs;
    const std::string blanks = signs.blank + "*";
    std::vector<std::string> parts;
    parts.reserve(sizes.size());
    for (const auto& [size, symbols] : sizes)
        parts.push_back(fmt::format(
            "{}{}(?:{}){}{}{}", signs.number(), blanks, listed(symbols, "|"), signs.end(), blanks,
            kind == Kind::length && size == factor::foot ? fmt::format("(?:{}(?=[0-9.]))?", signs.dash)
                                                         : ""));
    const std::string sign = may_be_negative ? fmt::format("(?:\\+|{})?", signs.dash) : "\\+?";
    // A temperature is one number and one unit; the others may go on with a smaller unit.
    const std::string sum = kind == Kind::temperature || parts.size() == 1
                                ? fmt::format("(?:{})", listed(parts, "|"))
                                : fmt::format("(?=.)(?:{})?", listed(parts, ")?(?:"));
    return fmt::format("^{0}{1}{0}{2}$", blanks, sign, sum);
}

} // namespace ringfill
