#include <ringfill/heat/shown_temperature.hpp>

#include <cmath>

#include <fmt/format.h>

#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double steps_in_degC = 1.0 / 5;
constexpr double steps_in_degF = 1.0 / 10;
constexpr double on_a_step = 1e-6; // of a step: what is on one stays on it

/// In steps of 5 °C or 10 °F.
double in_steps(Temperature temperature, UnitSystem units) {
    const double degC = deg_c(temperature);
    return units == UnitSystem::metric ? degC * steps_in_degC : (degC * 1.8 + 32) * steps_in_degF;
}

Temperature of_steps(double steps, UnitSystem units) {
    return celsius(units == UnitSystem::metric ? steps / steps_in_degC : (steps / steps_in_degF - 32) / 1.8);
}

std::string rounded_formula(std::string_view how, const std::string& sign, const std::string& formula,
                            UnitSystem units) {
    return units == UnitSystem::metric
               ? fmt::format("5*{}(({})/5 {} 0.000001)", how, formula, sign)
               : fmt::format("(10*{}((({})*1.8 + 32)/10 {} 0.000001) - 32)/1.8", how, formula, sign);
}

std::optional<Temperature> in_print(std::optional<double> degC, std::optional<double> degF,
                                    UnitSystem units) {
    if (units == UnitSystem::metric && degC)
        return celsius(*degC);
    if (units == UnitSystem::inch && degF)
        return celsius((*degF - 32) / 1.8);
    return std::nullopt;
}

} // namespace

Temperature rounded_up(Temperature computed, UnitSystem units) {
    return of_steps(std::ceil(in_steps(computed, units) - on_a_step), units);
}

Temperature rounded_down(Temperature computed, UnitSystem units) {
    return of_steps(std::floor(in_steps(computed, units) + on_a_step), units);
}

std::string rounded_up_formula(const std::string& formula, UnitSystem units) {
    return rounded_formula("ceil", "-", formula, units);
}

std::string rounded_down_formula(const std::string& formula, UnitSystem units) {
    return rounded_formula("floor", "+", formula, units);
}

PrintedFigure printed_minimum(Temperature exact, std::optional<double> degC, std::optional<double> degF,
                              UnitSystem units) {
    if (const auto printed = in_print(degC, degF, units))
        return {*printed, true};
    return {rounded_up(exact, units), false};
}

PrintedFigure printed_maximum(Temperature exact, std::optional<double> degC, std::optional<double> degF,
                              UnitSystem units) {
    if (const auto printed = in_print(degC, degF, units))
        return {*printed, true};
    return {rounded_down(exact, units), false};
}

} // namespace ringfill
