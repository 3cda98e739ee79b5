#include <ringfill/units/unit.hpp>

#include <algorithm>

#include <range/v3/algorithm/contains.hpp>

#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

using namespace factor;

// A kind's units stand together. Where trade and SI differ in spelling, both are read.
constexpr Unit units_known[] = {
    {{"mm"}, Kind::length, 1e-3},
    {{"cm"}, Kind::length, 1e-2},
    {{"m"}, Kind::length, 1},
    {{"um", "µm", "μm"}, Kind::length, 1e-6},
    {{"in", "inch", "inches", "\"", "″", "”", "''"}, Kind::length, inch},
    {{"thou"}, Kind::length, thou},
    {{"ft", "'", "′", "’"}, Kind::length, foot},
    {{"m3", "m³"}, Kind::volume, 1},
    {{"L", "l"}, Kind::volume, litre},
    {{"mm3"}, Kind::volume, 1e-9},
    {{"cm3"}, Kind::volume, 1e-6},
    {{"ft3", "ft³"}, Kind::volume, cubic_foot},
    {{"in3"}, Kind::volume, cubic_inch},
    {{"kg"}, Kind::mass, 1},
    {{"g"}, Kind::mass, 1e-3},
    {{"lb", "lbs"}, Kind::mass, pound},
    {{"oz"}, Kind::mass, ounce},
    {{"mm/min"}, Kind::speed, 1e-3 / minute},
    {{"m/min"}, Kind::speed, 1 / minute},
    {{"cm/min"}, Kind::speed, 1e-2 / minute},
    {{"mm/s"}, Kind::speed, 1e-3},
    {{"m/s"}, Kind::speed, 1},
    {{"in/min", "ipm"}, Kind::speed, inch / minute},
    {{"ft/min"}, Kind::speed, foot / minute},
    {{"L/min", "l/min"}, Kind::volume_flow, litre / minute},
    {{"m3/h"}, Kind::volume_flow, 1 / hour},
    {{"ft3/h", "cfh"}, Kind::volume_flow, cubic_foot / hour},
    {{"kg/h"}, Kind::mass_flow, 1 / hour},
    {{"g/min"}, Kind::mass_flow, 1e-3 / minute},
    {{"lb/h"}, Kind::mass_flow, pound / hour},
    {{"A"}, Kind::current, 1},
    {{"V"}, Kind::voltage, 1},
    {{"kW"}, Kind::power, 1e3},
    {{"W"}, Kind::power, 1},
    {{"W/K"}, Kind::conductance, 1},
    {{"kJ/mm"}, Kind::energy_per_length, 1e6},
    {{"kJ/cm"}, Kind::energy_per_length, 1e5},
    {{"J/mm"}, Kind::energy_per_length, 1e3},
    {{"kJ/in"}, Kind::energy_per_length, 1e3 / inch},
    {{"degC", "°C", "C", "℃"}, Kind::temperature, 1, celsius_zero},
    {{"degF", "°F", "F", "℉"}, Kind::temperature, kelvin_per_fahrenheit, fahrenheit_zero},
    {{"K"}, Kind::temperature, 1},
    {{"deg", "°"}, Kind::angle, degree},
    {{"rad"}, Kind::angle, 1},
    {{"rev/min", "rpm"}, Kind::turning, 1 / minute},
    {{"rev/s"}, Kind::turning, 1},
    {{"min"}, Kind::time, minute},
    {{"h"}, Kind::time, hour},
    {{"s"}, Kind::time, 1},
    {{"%"}, Kind::share, 0.01},
};

} // namespace

std::span<const Unit> units_of(Kind kind) {
    const auto is_of_kind = [kind](const Unit& unit) { return unit.kind == kind; };
    const auto first = std::find_if(std::begin(units_known), std::end(units_known), is_of_kind);
    return {first, std::find_if_not(first, std::end(units_known), is_of_kind)};
}

const Unit* find_unit(std::string_view symbol, std::optional<Kind> kind) {
    for (const Unit& unit : kind ? units_of(*kind) : units_known)
        if (!symbol.empty() && ranges::contains(unit.spellings, symbol))
            return &unit;
    return nullptr;
}

std::vector<std::string> symbols_of(Kind kind) {
    std::vector<std::string> symbols;
    for (const Unit& unit : units_of(kind))
        for (const std::string_view spelling : unit.spellings)
            if (!spelling.empty())
                symbols.emplace_back(spelling);
    return symbols;
}

} // namespace ringfill
