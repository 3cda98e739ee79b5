#include <ringfill/units/show.hpp>

#include <cmath>

#include <fmt/format.h>

#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

/// As many decimals as three significant digits take, at most three.
constexpr int three_digits = -1;

/// A number with its decimals, and the unit that follows it.
struct Shown {
    double number;
    int decimals;
    std::string_view unit;
};

/// No minus stands before a zero.
std::string text_of(const Shown& shown) {
    const double size = std::fabs(shown.number);
    const int decimals = shown.decimals != three_digits ? shown.decimals
                         : size >= 99.95                ? 0
                         : size >= 9.995                ? 1
                         : size >= 0.9995               ? 2
                                                        : 3;
    std::string text = fmt::format("{:.{}f}", shown.number, decimals);
    if (text.starts_with('-') && text.find_first_not_of("-0.") == std::string::npos)
        text.erase(0, 1);
    return text.append(shown.unit);
}

std::string in_units(UnitSystem system, const Shown& metric, const Shown& inch) {
    return text_of(system == UnitSystem::metric ? metric : inch);
}

/// A temperature in the degrees of a system.
double degrees_of(Temperature temperature, UnitSystem system) {
    if (system == UnitSystem::metric)
        return temperature.value() - factor::celsius_zero;
    return (temperature.value() - factor::fahrenheit_zero) / factor::kelvin_per_fahrenheit;
}

/// Degrees in steps of 5 °C or 10 °F; a value that is a step but for rounding errors stays on it.
double in_steps(Temperature temperature, UnitSystem system, bool up) {
    const double step = system == UnitSystem::metric ? 5 : 10;
    const double steps = degrees_of(temperature, system) / step;
    return step * (up ? std::ceil(steps - 1e-9) : std::floor(steps + 1e-9));
}

std::string show_degrees(double degrees, UnitSystem system, int decimals = 0) {
    return in_units(system, {degrees, decimals, " °C"}, {degrees, decimals, " °F"});
}

} // namespace

std::string show(Length length, UnitSystem system) {
    return in_units(system, {length.value() * 1e3, 1, " mm"}, {length.value() / factor::inch, 3, " in"});
}

std::string show_wire(Length diameter, UnitSystem system) {
    const bool is_of_tenths = std::fabs(std::remainder(diameter.value() * 1e4, 1)) < 1e-6;
    return in_units(system, {diameter.value() * 1e3, is_of_tenths ? 1 : 2, " mm"},
                    {diameter.value() / factor::inch, 3, " in"});
}

std::string show_pitch(Length pitch, UnitSystem system) {
    return in_units(system, {pitch.value() * 1e3, 2, " mm"}, {pitch.value() / factor::inch, 3, " in"});
}

std::string show_distance(Length length, UnitSystem system) {
    return in_units(system, {length.value(), three_digits, " m"},
                    {length.value() / factor::foot, three_digits, " ft"});
}

std::string show(Area area, UnitSystem system) {
    return in_units(system, {area.value() * 1e6, 1, " mm²"},
                    {area.value() / (factor::inch * factor::inch), 3, " in²"});
}

std::string show(Volume volume, UnitSystem system) {
    return in_units(system, {volume.value() / factor::litre, 0, " L"},
                    {volume.value() / factor::cubic_foot, three_digits, " ft³"});
}

std::string show(Mass mass, UnitSystem system) {
    const double kg = mass.value();
    if (std::fabs(kg) < 0.0995)
        return in_units(system, {kg * 1e3, 0, " g"}, {kg / factor::ounce, 1, " oz"});
    return in_units(system, {kg, 2, " kg"}, {kg / factor::pound, 2, " lb"});
}

std::string show(MassFlow flow, UnitSystem system) {
    const double kg_h = flow.value() * factor::hour;
    return in_units(system, {kg_h, 2, " kg/h"}, {kg_h / factor::pound, 2, " lb/h"});
}

std::string show(Speed speed, UnitSystem system) {
    return in_units(system, {speed.value() * 1e3 * factor::minute, 0, " mm/min"},
                    {speed.value() / factor::inch * factor::minute, 1, " in/min"});
}

std::string show_feed(Speed speed, UnitSystem system) {
    return in_units(system, {speed.value() * factor::minute, 1, " m/min"},
                    {speed.value() / factor::inch * factor::minute, 0, " in/min"});
}

std::string show_cutting_speed(Speed speed, UnitSystem system) {
    const double a_minute = speed.value() * factor::minute;
    return in_units(system, {a_minute, 0, " m/min"}, {a_minute / factor::foot, 0, " ft/min"});
}

std::string show_fine(Length length, UnitSystem system) {
    return in_units(system, {length.value() * 1e3, 3, " mm"}, {length.value() / factor::inch, 4, " in"});
}

std::string show_limit(Length limit, UnitSystem system, bool is_lower) {
    const double step = system == UnitSystem::metric ? 1e-6 : 1e-4 * factor::inch;
    const double steps = limit.value() / step;
    // A step but for rounding errors stays on it.
    return show_fine(in_si<Length>(step * (is_lower ? std::ceil(steps - 1e-6) : std::floor(steps + 1e-6))),
                     system);
}

std::string show_micro(Length length, UnitSystem system) {
    return in_units(system, {length.value() * 1e6, three_digits, " µm"},
                    {length.value() / factor::inch * 1e6, 0, " µin"});
}

std::string show(VolumeFlow flow, UnitSystem system) {
    return in_units(system, {flow.value() / factor::litre * factor::minute, three_digits, " L/min"},
                    {flow.value() / factor::cubic_foot * factor::hour, three_digits, " ft³/h"});
}

std::string show(Time time) {
    const double seconds = time.value();
    if (seconds < 59.5)
        return fmt::format("{:.0f} s", seconds);
    const double minutes = std::round(seconds / factor::minute);
    if (minutes < 60)
        return fmt::format("{:.0f} min", minutes);
    return fmt::format("{:.0f} h {:02.0f} min", std::floor(minutes / 60), std::fmod(minutes, 60));
}

std::string show(Angle angle) {
    return text_of({angle.value() / factor::degree, 0, "°"});
}

std::string show_turning(Turning turning) {
    return text_of({turning.value() * factor::minute, three_digits, " rev/min"});
}

std::string show(Current current) {
    return text_of({current.value(), 0, " A"});
}

std::string show(Temperature temperature, UnitSystem system) {
    return show_degrees(degrees_of(temperature, system), system);
}

std::string show_exact(Temperature temperature, UnitSystem system) {
    const double degrees = degrees_of(temperature, system);
    return show_degrees(degrees, system, std::abs(degrees - std::round(degrees)) < 0.05 ? 0 : 1);
}

std::string show_minimum(Temperature temperature, UnitSystem system) {
    return show_degrees(in_steps(temperature, system, true), system);
}

std::string show_maximum(Temperature temperature, UnitSystem system) {
    return show_degrees(in_steps(temperature, system, false), system);
}

} // namespace ringfill
