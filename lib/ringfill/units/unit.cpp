#include <ringfill/units/unit.hpp>

#include <array>

#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

using namespace factor;

// The first of each kind is the one that messages show. Where trade and SI differ in spelling, both are read.
constexpr std::array units_known = {
    Unit{"mm", Kind::length, 1e-3},
    Unit{"cm", Kind::length, 1e-2},
    Unit{"m", Kind::length, 1},
    Unit{"um", Kind::length, 1e-6},
    Unit{"µm", Kind::length, 1e-6},
    Unit{"μm", Kind::length, 1e-6},
    Unit{"in", Kind::length, inch},
    Unit{"inch", Kind::length, inch},
    Unit{"inches", Kind::length, inch},
    Unit{"\"", Kind::length, inch},
    Unit{"″", Kind::length, inch},
    Unit{"”", Kind::length, inch},
    Unit{"''", Kind::length, inch},
    Unit{"thou", Kind::length, thou},
    Unit{"ft", Kind::length, foot},
    Unit{"'", Kind::length, foot},
    Unit{"′", Kind::length, foot},
    Unit{"’", Kind::length, foot},
    Unit{"m3", Kind::volume, 1},
    Unit{"m³", Kind::volume, 1},
    Unit{"L", Kind::volume, litre},
    Unit{"l", Kind::volume, litre},
    Unit{"mm3", Kind::volume, 1e-9},
    Unit{"cm3", Kind::volume, 1e-6},
    Unit{"ft3", Kind::volume, cubic_foot},
    Unit{"ft³", Kind::volume, cubic_foot},
    Unit{"in3", Kind::volume, cubic_inch},
    Unit{"kg", Kind::mass, 1},
    Unit{"g", Kind::mass, 1e-3},
    Unit{"lb", Kind::mass, pound},
    Unit{"lbs", Kind::mass, pound},
    Unit{"oz", Kind::mass, ounce},
    Unit{"mm/min", Kind::speed, 1e-3 / minute},
    Unit{"m/min", Kind::speed, 1 / minute},
    Unit{"cm/min", Kind::speed, 1e-2 / minute},
    Unit{"mm/s", Kind::speed, 1e-3},
    Unit{"m/s", Kind::speed, 1},
    Unit{"in/min", Kind::speed, inch / minute},
    Unit{"ipm", Kind::speed, inch / minute},
    Unit{"ft/min", Kind::speed, foot / minute},
    Unit{"L/min", Kind::volume_flow, litre / minute},
    Unit{"l/min", Kind::volume_flow, litre / minute},
    Unit{"m3/h", Kind::volume_flow, 1 / hour},
    Unit{"ft3/h", Kind::volume_flow, cubic_foot / hour},
    Unit{"cfh", Kind::volume_flow, cubic_foot / hour},
    Unit{"kg/h", Kind::mass_flow, 1 / hour},
    Unit{"g/min", Kind::mass_flow, 1e-3 / minute},
    Unit{"lb/h", Kind::mass_flow, pound / hour},
    Unit{"A", Kind::current, 1},
    Unit{"V", Kind::voltage, 1},
    Unit{"kW", Kind::power, 1e3},
    Unit{"W", Kind::power, 1},
    Unit{"W/K", Kind::conductance, 1},
    Unit{"kJ/mm", Kind::energy_per_length, 1e6},
    Unit{"kJ/cm", Kind::energy_per_length, 1e5},
    Unit{"J/mm", Kind::energy_per_length, 1e3},
    Unit{"kJ/in", Kind::energy_per_length, 1e3 / inch},
    Unit{"degC", Kind::temperature, 1, celsius_zero},
    Unit{"°C", Kind::temperature, 1, celsius_zero},
    Unit{"C", Kind::temperature, 1, celsius_zero},
    Unit{"℃", Kind::temperature, 1, celsius_zero},
    Unit{"degF", Kind::temperature, kelvin_per_fahrenheit, fahrenheit_zero},
    Unit{"°F", Kind::temperature, kelvin_per_fahrenheit, fahrenheit_zero},
    Unit{"F", Kind::temperature, kelvin_per_fahrenheit, fahrenheit_zero},
    Unit{"℉", Kind::temperature, kelvin_per_fahrenheit, fahrenheit_zero},
    Unit{"K", Kind::temperature, 1},
    Unit{"deg", Kind::angle, degree},
    Unit{"°", Kind::angle, degree},
    Unit{"rad", Kind::angle, 1},
    Unit{"rev/min", Kind::turning, 1 / minute},
    Unit{"rpm", Kind::turning, 1 / minute},
    Unit{"rev/s", Kind::turning, 1},
    Unit{"min", Kind::time, minute},
    Unit{"h", Kind::time, hour},
    Unit{"s", Kind::time, 1},
    Unit{"%", Kind::share, 0.01},
};

} // namespace

std::optional<Unit> find_unit(std::string_view symbol, Kind kind) {
    for (const Unit& unit : units_known)
        if (unit.kind == kind && unit.symbol == symbol)
            return unit;
    return std::nullopt;
}

std::optional<Unit> find_unit(std::string_view symbol) {
    for (const Unit& unit : units_known)
        if (unit.symbol == symbol)
            return unit;
    return std::nullopt;
}

std::vector<std::string> symbols_of(Kind kind) {
    std::vector<std::string> symbols;
    for (const Unit& unit : units_known)
        if (unit.kind == kind)
            symbols.emplace_back(unit.symbol);
    return symbols;
}

} // namespace ringfill
