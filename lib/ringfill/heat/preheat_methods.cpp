#include <ringfill/heat/preheat_methods.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/any_of.hpp>

#include <ringfill/heat/gathering.hpp>
#include <ringfill/heat/identity.hpp>
#include <ringfill/heat/shown_temperature.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// Tables for structural steel were made for usual heat inputs [practice].
constexpr double low_heat_input_kj_mm = 0.5;
constexpr double over_wall_mm = 19.05;
constexpr double least_at_low_heat_degC = 65;
constexpr double least_at_low_heat_degF = 150;

void add_least_at_low_heat(Gathering& gathering, const HeatCase& heat_case) {
    const auto& heat = heat_case.lowest_heat_input;
    const bool is_low = !heat || kj_mm(*heat) < low_heat_input_kj_mm;
    const bool is_thick = !heat_case.wall || mm(*heat_case.wall) > over_wall_mm * (1 + 1e-9);
    if (!gathering.structural_lists || !is_low || !is_thick)
        return;
    PreheatMethod method;
    method.name = "practice at a low heat input";
    method.asks = Asks::minimum;
    method.minimum = celsius(least_at_low_heat_degC);
    method.counts = printed_minimum(*method.minimum, least_at_low_heat_degC, least_at_low_heat_degF,
                                    heat_case.rules.units)
                        .value;
    method.applies = true;
    method.source = "practice";
    method.note =
        heat ? "tables for structural steel were made for more heat input"
             : "the heat input is not known, and tables for structural steel were made for usual ones";
    gathering.found.methods.push_back(std::move(method));
}

/// Of a range that goes far over what counts, no more than that, with the whole of it told.
void keep_to_what_counts(PreheatMethod& method, const RowAnswer& row, Gathering& gathering,
                         UnitSystem units) {
    if (!hotter_than_counts(row))
        return;
    const FillerRange range{*row.range_from, row.minimum.value, counted_of_filler(row), row.minimum.source};
    method.minimum = range.counted;
    method.counts = rounded_up(range.counted, units);
    method.formula = "max(T_low, min(T_high, T_most))";
    method.inputs = {{"T_low", deg_c(range.low), "°C"},
                     {"T_high", deg_c(range.high), "°C"},
                     {"T_most", deg_c(most_of_a_filler), "°C"}};
    method.note =
        fmt::format("of its {:.0f} to {:.0f} °C no more counts here", deg_c(range.low), deg_c(range.high));
    if (method.applies)
        gathering.found.filler_range = range;
}

/// What the filler's own metal asks for, whatever it is laid on. Metal that goes by its own practice alone is
/// spared it, and told.
void add_filler_practice(Gathering& gathering, const HeatCase& heat_case) {
    const auto& practice = heat_case.filler->practice;
    if (!practice)
        return;
    const auto row = look_up(*practice, heat_case);
    const RowAnswer asked = row ? *row : hottest_row(*practice);
    PreheatMethod method = row_method(*practice, asked, heat_case);
    method.applies = ranges::any_of(gathering.found.methods, &PreheatMethod::applies);
    if (const std::string_view why = why_not_for_filler(heat_case.base->structure); !why.empty()) {
        method.applies = false;
        method.note = why;
    } else {
        keep_to_what_counts(method, asked, gathering, heat_case.rules.units);
    }
    gathering.found.methods.push_back(std::move(method));
}

} // namespace

void gather_methods(Preheat& found, const HeatCase& heat_case) {
    Gathering gathering{found};
    add_documents(gathering, heat_case);
    add_own_row(gathering, heat_case);
    add_formula(gathering, heat_case);
    add_least_at_low_heat(gathering, heat_case);
    add_filler_practice(gathering, heat_case);
}

} // namespace ringfill
