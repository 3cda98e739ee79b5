#include <ringfill/table/braces.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <variant>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/find_if.hpp>

#include <ringfill/units/factor.hpp>
#include <ringfill/units/measure.hpp>

namespace ringfill {
namespace {

/// How measures of a kind are shown in a system of units: in one unit, with so many decimals.
struct RoundedUnit {
    Kind kind;
    UnitSystem units;
    double below; ///< measures under this [SI]; larger ones by the next row
    double factor;
    int decimals;
    std::string_view symbol;
    double zero = 0;
};

constexpr double no_end = std::numeric_limits<double>::infinity();
constexpr RoundedUnit rounded_units[] = {
    {Kind::length, UnitSystem::metric, 1, 1e-3, 0, "mm"},
    {Kind::length, UnitSystem::metric, no_end, 1, 1, "m"},
    {Kind::length, UnitSystem::inch, 0.9, factor::inch, 0, "in"},
    {Kind::length, UnitSystem::inch, no_end, factor::foot, 0, "ft"},
    {Kind::temperature, UnitSystem::metric, no_end, 1, 0, "°C", factor::celsius_zero},
    {Kind::temperature, UnitSystem::inch, no_end, factor::kelvin_per_fahrenheit, 0, "°F",
     factor::fahrenheit_zero},
    {Kind::mass, UnitSystem::metric, no_end, 1, 0, "kg"},
    {Kind::mass, UnitSystem::inch, no_end, factor::pound, 0, "lb"},
    {Kind::speed, UnitSystem::metric, no_end, 1, 1, "m/s"},
    {Kind::speed, UnitSystem::inch, no_end, factor::foot / factor::minute, 0, "ft/min"},
    {Kind::volume_flow, UnitSystem::metric, no_end, 1 / factor::minute, 0, "m³/min"},
    {Kind::volume_flow, UnitSystem::inch, no_end, factor::cubic_foot / factor::minute, 0, "ft³/min"},
};

/// A measure [SI] rounded up or down to what is shown; one that is whole but for rounding errors stays.
std::string rounded_text(double si, Kind kind, UnitSystem units, bool up) {
    constexpr double rounding = 1e-6;
    const RoundedUnit& in = *ranges::find_if(rounded_units, [&](const RoundedUnit& one) {
        return one.kind == kind && one.units == units && si < one.below;
    });
    const double steps_in_one = std::pow(10, in.decimals);
    const double steps = (si - in.zero) / in.factor * steps_in_one;
    return fmt::format("{:.{}f} {}",
                       (up ? std::ceil(steps - rounding) : std::floor(steps + rounding)) / steps_in_one,
                       in.decimals, in.symbol);
}

/// A measure in the units of the job; nothing when it is none. A temperature is one from which something
/// hurts: it is rounded down.
std::optional<std::string> measure_text(std::string_view text, UnitSystem units) {
    constexpr std::string_view at_most = "at most ";
    const bool is_upper = text.starts_with(at_most);
    if (is_upper)
        text.remove_prefix(at_most.size());
    for (const Kind kind : {Kind::length, Kind::temperature, Kind::mass, Kind::speed, Kind::volume_flow}) {
        const auto si = measure(text, kind);
        if (std::holds_alternative<double>(si))
            return rounded_text(std::get<double>(si), kind, units, !is_upper && kind != Kind::temperature);
    }
    return std::nullopt;
}

/// A piece of a text: what stands in braces, or what stands between.
struct Piece {
    std::string_view text;
    bool in_braces = false;
    bool is_broken = false; ///< a brace without its partner
};

/// Where the next brace stands, or behind the text.
std::size_t next_brace(std::string_view text, std::size_t from) {
    const auto is_brace = [](char sign) { return sign == '{' || sign == '}'; };
    return static_cast<std::size_t>(std::find_if(text.begin() + from, text.end(), is_brace) - text.begin());
}

std::vector<Piece> pieces_of(std::string_view text) {
    std::vector<Piece> pieces;
    while (!text.empty()) {
        const std::size_t brace = next_brace(text, 0);
        if (brace != 0)
            pieces.push_back({text.substr(0, brace)});
        if (brace == text.size())
            break;
        const std::size_t end = text[brace] == '{' ? next_brace(text, brace + 1) : brace;
        const bool is_whole = end != brace && end != text.size() && text[end] == '}';
        pieces.push_back(is_whole ? Piece{text.substr(brace + 1, end - brace - 1), true}
                                  : Piece{text.substr(brace, 1), true, true});
        text.remove_prefix((is_whole ? end : brace) + 1);
    }
    return pieces;
}

} // namespace

std::optional<std::string> wrong_brace(std::string_view text) {
    for (const Piece& piece : pieces_of(text))
        if (piece.in_braces && (piece.is_broken || !(ranges::contains(words_in_braces, piece.text) ||
                                                     measure_text(piece.text, UnitSystem::metric))))
            return std::string(piece.text);
    return std::nullopt;
}

std::string with_words(std::string_view text, const std::function<std::string(std::string_view)>& word) {
    std::string whole;
    for (const Piece& piece : pieces_of(text))
        whole += piece.in_braces ? word(piece.text) : std::string(piece.text);
    return whole;
}

std::string with_measures(std::string_view text, UnitSystem units) {
    return with_words(text, [&](std::string_view measure) {
        return measure_text(measure, units).value_or(fmt::format("{{{}}}", measure));
    });
}

std::string show_clear(Length length, UnitSystem units) {
    return rounded_text(length.value(), Kind::length, units, true);
}

} // namespace ringfill
