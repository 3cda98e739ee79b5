#include <ringfill/units/show.hpp>

#include <cmath>

#include <fmt/format.h>

#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

/// A fixed number of decimals, and no minus before a zero.
std::string fixed(double number, int decimals) {
    std::string text = fmt::format("{:.{}f}", number, decimals);
    if (text.starts_with('-') && text.find_first_not_of("-0.") == std::string::npos)
        text.erase(0, 1);
    return text;
}

/// A number with enough decimals for three significant digits, at most three decimals.
std::string digits(double number) {
    const double size = std::fabs(number);
    return fixed(number, size >= 99.95 ? 0 : size >= 9.995 ? 1 : size >= 0.9995 ? 2 : 3);
}

/// A temperature in the degrees of a system.
double degrees_of(Temperature temperature, UnitSystem system) {
    if (system == UnitSystem::metric)
        return temperature.value() - factor::celsius_zero;
    return (temperature.value() - factor::fahrenheit_zero) / factor::kelvin_per_fahrenheit;
}

/// Degrees in steps of 5 °C or 10 °F; a value that is a step but for rounding errors stays on it.
double in_steps(double degrees, UnitSystem system, bool up) {
    const double step = system == UnitSystem::metric ? 5 : 10;
    return step * (up ? std::ceil(degrees / step - 1e-9) : std::floor(degrees / step + 1e-9));
}

std::string show_degrees(double degrees, UnitSystem system) {
    return fixed(degrees, 0) + (system == UnitSystem::metric ? " °C" : " °F");
}

} // namespace

std::string show(Length length, UnitSystem system) {
    if (system == UnitSystem::metric)
        return fixed(length.value() * 1e3, 1) + " mm";
    return fixed(length.value() / factor::inch, 3) + " in";
}

std::string show_wire(Length diameter, UnitSystem system) {
    if (system == UnitSystem::metric)
        return fmt::format("{:.{}f} mm", diameter.value() * 1e3,
                           std::fabs(std::remainder(diameter.value() * 1e4, 1)) < 1e-6 ? 1 : 2);
    return show(diameter, system);
}

std::string show_pitch(Length pitch, UnitSystem system) {
    return system == UnitSystem::metric ? fixed(pitch.value() * 1e3, 2) + " mm" : show(pitch, system);
}

std::string show_distance(Length length, UnitSystem system) {
    if (system == UnitSystem::metric)
        return digits(length.value()) + " m";
    return digits(length.value() / factor::foot) + " ft";
}

std::string show(Area area, UnitSystem system) {
    if (system == UnitSystem::metric)
        return fixed(area.value() * 1e6, 1) + " mm²";
    return fixed(area.value() / (factor::inch * factor::inch), 3) + " in²";
}

std::string show(Volume volume, UnitSystem system) {
    if (system == UnitSystem::metric)
        return fixed(volume.value() / factor::litre, 0) + " L";
    return digits(volume.value() / factor::cubic_foot) + " ft³";
}

std::string show(Mass mass, UnitSystem system) {
    const bool small = std::fabs(mass.value()) < 0.0995;
    if (system == UnitSystem::metric)
        return small ? fixed(mass.value() * 1e3, 0) + " g" : fixed(mass.value(), 2) + " kg";
    return small ? fixed(mass.value() / factor::ounce, 1) + " oz"
                 : fixed(mass.value() / factor::pound, 2) + " lb";
}

std::string show(MassFlow flow, UnitSystem system) {
    const double kg_h = flow.value() * factor::hour;
    return system == UnitSystem::metric ? fixed(kg_h, 2) + " kg/h" : fixed(kg_h / factor::pound, 2) + " lb/h";
}

std::string show(Speed speed, UnitSystem system) {
    if (system == UnitSystem::metric)
        return fixed(speed.value() * 1e3 * factor::minute, 0) + " mm/min";
    return fixed(speed.value() / factor::inch * factor::minute, 1) + " in/min";
}

std::string show_feed(Speed speed, UnitSystem system) {
    if (system == UnitSystem::metric)
        return fixed(speed.value() * factor::minute, 1) + " m/min";
    return fixed(speed.value() / factor::inch * factor::minute, 0) + " in/min";
}

std::string show_cutting_speed(Speed speed, UnitSystem system) {
    const double a_minute = speed.value() * factor::minute;
    return system == UnitSystem::metric ? fixed(a_minute, 0) + " m/min"
                                        : fixed(a_minute / factor::foot, 0) + " ft/min";
}

std::string show_fine(Length length, UnitSystem system) {
    if (system == UnitSystem::metric)
        return fixed(length.value() * 1e3, 3) + " mm";
    return fixed(length.value() / factor::inch, 4) + " in";
}

namespace {

/// In the finest step that show_fine tells, away from the limit; a step but for rounding errors stays on it.
std::string show_limit(Length length, UnitSystem system, bool up) {
    const double step = system == UnitSystem::metric ? 1e-6 : 1e-4 * factor::inch;
    const double steps = length.value() / step;
    return show_fine(in_si<Length>(step * (up ? std::ceil(steps - 1e-6) : std::floor(steps + 1e-6))), system);
}

} // namespace

std::string show_fine_low(Length length, UnitSystem system) {
    return show_limit(length, system, true);
}

std::string show_fine_high(Length length, UnitSystem system) {
    return show_limit(length, system, false);
}

std::string show_micro(Length length, UnitSystem system) {
    if (system == UnitSystem::metric)
        return digits(length.value() * 1e6) + " µm";
    return fixed(length.value() / factor::inch * 1e6, 0) + " µin";
}

std::string show(VolumeFlow flow, UnitSystem system) {
    if (system == UnitSystem::metric)
        return digits(flow.value() / factor::litre * factor::minute) + " L/min";
    return digits(flow.value() / factor::cubic_foot * factor::hour) + " ft³/h";
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
    return fixed(angle.value() / factor::degree, 0) + "°";
}

std::string show_turning(Turning turning) {
    return digits(turning.value() * factor::minute) + " rev/min";
}

std::string show(Current current) {
    return fixed(current.value(), 0) + " A";
}

std::string show(Temperature temperature, UnitSystem system) {
    return show_degrees(degrees_of(temperature, system), system);
}

std::string show_exact(Temperature temperature, UnitSystem system) {
    const double degrees = degrees_of(temperature, system);
    const bool whole = std::abs(degrees - std::round(degrees)) < 0.05;
    return fixed(degrees, whole ? 0 : 1) + (system == UnitSystem::metric ? " °C" : " °F");
}

std::string show_minimum(Temperature temperature, UnitSystem system) {
    return show_degrees(in_steps(degrees_of(temperature, system), system, true), system);
}

std::string show_maximum(Temperature temperature, UnitSystem system) {
    return show_degrees(in_steps(degrees_of(temperature, system), system, false), system);
}

bool rounding_crosses(Temperature minimum, Temperature maximum, UnitSystem system) {
    return maximum >= minimum && in_steps(degrees_of(minimum, system), system, true) >
                                     in_steps(degrees_of(maximum, system), system, false);
}

} // namespace ringfill
