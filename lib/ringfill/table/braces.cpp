#include <ringfill/table/braces.hpp>

#include <cmath>

#include <algorithm>
#include <iterator>
#include <variant>

#include <fmt/format.h>

#include <ringfill/units/factor.hpp>
#include <ringfill/units/measure.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double rounding = 1e-6;

bool is_word(std::string_view text) {
    return std::find(std::begin(words_in_braces), std::end(words_in_braces), text) !=
           std::end(words_in_braces);
}

constexpr std::string_view at_most = "at most ";

/// A measure that is not to be passed.
bool is_upper(std::string_view text) {
    return text.starts_with(at_most);
}

std::optional<double> measured_as(std::string_view text, Kind kind) {
    const auto read = measure(is_upper(text) ? text.substr(at_most.size()) : text, kind);
    return std::holds_alternative<double>(read) ? std::optional(std::get<double>(read)) : std::nullopt;
}

/// A piece of a text: what stands in braces, or what stands between.
struct Piece {
    std::string_view text;
    bool in_braces = false;
    bool is_broken = false; ///< a brace without its partner
};

/// Where the next brace stands, or npos.
std::size_t next_brace(std::string_view text, std::size_t from) {
    const auto* const found =
        std::find_if(text.begin() + from, text.end(), [](char sign) { return sign == '{' || sign == '}'; });
    return found == text.end() ? std::string_view::npos : static_cast<std::size_t>(found - text.begin());
}

std::vector<Piece> pieces_of(std::string_view text) {
    std::vector<Piece> pieces;
    while (!text.empty()) {
        const std::size_t brace = next_brace(text, 0);
        if (brace != 0)
            pieces.push_back({text.substr(0, brace)});
        if (brace == std::string_view::npos)
            break;
        const std::size_t end = text[brace] == '{' ? next_brace(text, brace + 1) : brace;
        if (end == std::string_view::npos || text[end] != '}' || end == brace) {
            pieces.push_back({text.substr(brace, 1), true, true});
            text.remove_prefix(brace + 1);
            continue;
        }
        pieces.push_back({text.substr(brace + 1, end - brace - 1), true});
        text.remove_prefix(end + 1);
    }
    return pieces;
}

template <class Rounded>
std::string to_whole_steps(Length length, UnitSystem units, Rounded rounded) {
    const double metres = length.value();
    if (units == UnitSystem::metric)
        return metres < 1 ? fmt::format("{:.0f} mm", rounded(metres * 1e3))
                          : fmt::format("{:.1f} m", rounded(metres * 10) / 10);
    return metres < 0.9 ? fmt::format("{:.0f} in", rounded(metres / factor::inch))
                        : fmt::format("{:.0f} ft", rounded(metres / factor::foot));
}

constexpr Kind kinds_in_braces[] = {Kind::length, Kind::temperature, Kind::mass, Kind::speed,
                                    Kind::volume_flow};

/// Air that moves, and how fast: rounded up.
std::string show_air(double si, Kind kind, UnitSystem units) {
    const bool metric = units == UnitSystem::metric;
    if (kind == Kind::speed)
        return metric
                   ? fmt::format("{:.1f} m/s", std::ceil(si * 10 - rounding) / 10)
                   : fmt::format("{:.0f} ft/min", std::ceil(si / factor::foot * factor::minute - rounding));
    const double per_minute = si * factor::minute;
    return metric ? fmt::format("{:.0f} m³/min", std::ceil(per_minute - rounding))
                  : fmt::format("{:.0f} ft³/min", std::ceil(per_minute / factor::cubic_foot - rounding));
}

std::string show_mass(double kilograms, bool at_most_so, UnitSystem units) {
    const double steps = units == UnitSystem::metric ? kilograms : kilograms / factor::pound;
    return fmt::format("{:.0f} {}", at_most_so ? std::floor(steps + rounding) : std::ceil(steps - rounding),
                       units == UnitSystem::metric ? "kg" : "lb");
}

/// A measure in the units of the job; nothing when it is none.
std::optional<std::string> told_measure(std::string_view text, UnitSystem units) {
    for (const Kind kind : kinds_in_braces) {
        const auto si = measured_as(text, kind);
        if (!si)
            continue;
        if (kind == Kind::length)
            return (is_upper(text) ? show_within : show_clear)(in_si<Length>(*si), units);
        if (kind == Kind::temperature)
            return show_from(in_si<Temperature>(*si), units);
        return kind == Kind::mass ? show_mass(*si, is_upper(text), units) : show_air(*si, kind, units);
    }
    return std::nullopt;
}

} // namespace

std::optional<std::string> wrong_brace(std::string_view text) {
    for (const Piece& piece : pieces_of(text))
        if (piece.in_braces &&
            (piece.is_broken || !(is_word(piece.text) || told_measure(piece.text, UnitSystem::metric))))
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
        return told_measure(measure, units).value_or(fmt::format("{{{}}}", measure));
    });
}

std::string show_from(Temperature temperature, UnitSystem units) {
    const double degrees = units == UnitSystem::metric ? deg_c(temperature) : 32 + 1.8 * deg_c(temperature);
    return fmt::format("{:.0f} {}", std::floor(degrees + rounding),
                       units == UnitSystem::metric ? "°C" : "°F");
}

std::string show_clear(Length length, UnitSystem units) {
    return to_whole_steps(length, units, [](double steps) { return std::ceil(steps - rounding); });
}

std::string show_within(Length length, UnitSystem units) {
    return to_whole_steps(length, units, [](double steps) { return std::floor(steps + rounding); });
}

} // namespace ringfill
