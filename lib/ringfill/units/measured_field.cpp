#include <ringfill/units/measured_field.hpp>

#include <stdexcept>

#include <fmt/format.h>

#include <ringfill/document/in_span.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/units/decimal.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/measure.hpp>
#include <ringfill/units/unit.hpp>

namespace ringfill {
namespace {

/// A length that lacks nothing but its unit, with the unit of the job and the same length in the other
/// system.
std::string with_unit(double number, double bare_length) {
    const bool inch = bare_length == factor::inch;
    const std::string mm = fmt::format("\"{:.6g} mm\"", inch ? number * 25.4 : number);
    const std::string in = fmt::format("\"{:.4g} in\"", inch ? number : number / 25.4);
    return inch ? fmt::format("write {} or {}", in, mm) : fmt::format("write {} or {}", mm, in);
}

/// The remedy for any other quantity without its unit: where a kind has several units none is chosen for the
/// user.
std::string with_some_unit(std::string_view number, Kind kind) {
    const auto symbols = symbols_of(kind);
    if (symbols.size() != 1)
        return fmt::format("write {}", kind_in_words(kind));
    const std::string as_it_is = fmt::format("\"{} {}\"", number, symbols.front());
    const auto ratio = kind == Kind::share ? decimal_of(number) : std::nullopt;
    if (const double part = ratio ? as_double(*ratio) : 0; part > 0 && part <= 1)
        return fmt::format("write \"{:.12g} %\" or {}, whichever is meant", 100 * part, as_it_is);
    return "write " + as_it_is;
}

std::string remedy_of(const NotMeasured& fault, const std::string& typed, const Field& field, double bare) {
    if (fault.bare_length && bare > 0)
        return with_unit(*fault.bare_length, bare);
    if (fault.reason == "has no unit" && field.kind != Kind::length)
        return with_some_unit(printable(typed, 40), field.kind);
    std::string remedy = fault.remedy;
    for (const std::string_view word : field.words)
        remedy += fmt::format(", or \"{}\"", word);
    return remedy;
}

/// The unit that ranges of a kind are told in; the kind must have one.
const Unit& range_unit(Kind kind) {
    if (units_of(kind).empty())
        throw std::logic_error("this kind of field has no unit");
    return units_of(kind).front();
}

/// A span in the unit that the kind is told in; degrees Celsius have their own zero.
std::string span_told(const Span& span, Kind kind) {
    const Unit& unit = range_unit(kind);
    return span_in_words({span.low - unit.zero, span.high - unit.zero, span.low_is_open}, unit.symbol(),
                         unit.factor);
}

std::optional<double> in_range(const Spot& spot, const Field& field, double si) {
    if (in_span(si, field.span))
        return si;
    const Unit& unit = range_unit(field.kind);
    spot.refuse("is out of range", fmt::format("give a value {}", span_told(field.span, field.kind)),
                fmt::format("{:.9g} {}", (si - unit.zero) / unit.factor, unit.symbol()));
    return std::nullopt;
}

} // namespace

std::optional<double> measured_si(const Spot& spot, const Field& field) {
    const Reading& reading = spot.entry->reading();
    const double bare = reading.bare_length;
    if (const std::string* text = spot.value->text()) {
        const auto result = measure(*text, field.kind);
        if (const auto* si = std::get_if<double>(&result))
            return in_range(spot, field, *si);
        const auto& fault = std::get<NotMeasured>(result);
        spot.refuse(fault.reason, remedy_of(fault, *text, field, bare));
    } else if (const double* number = spot.value->number()) {
        if (reading.by_hand)
            return in_range(spot, field, *number);
        if (field.kind == Kind::length && bare > 0)
            return in_range(spot, field, *number * bare);
        spot.refuse("has no unit", with_some_unit(write_number(*number), field.kind));
    } else {
        spot.refuse(fmt::format("is {}", kind_in_words(*spot.value)),
                    fmt::format("write {}", kind_in_words(field.kind)));
    }
    return std::nullopt;
}

std::string range_in_words(const Field& field) {
    if (field.kind == Kind::count || field.kind == Kind::number)
        return span_in_words(field.span, "");
    return units_of(field.kind).empty() ? std::string() : span_told(field.span, field.kind);
}

} // namespace ringfill
