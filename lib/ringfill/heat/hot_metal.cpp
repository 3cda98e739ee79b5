#include <ringfill/heat/hot_metal.hpp>

#include <algorithm>
#include <cmath>

#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// Where the ranges of c(T) meet [°C].
constexpr double from_degC = 20;
constexpr double first_to_degC = 600;
constexpr double peak_degC = 735;
constexpr double last_from_degC = 900;

double steel_c(double t) {
    if (t < first_to_degC)
        return 425 + t * (7.73e-1 + t * (-1.69e-3 + t * 2.22e-6));
    if (t < peak_degC)
        return 666 + 13'002 / (738 - t);
    return t < last_from_degC ? 545 + 17'820 / (t - 731) : 650;
}

// The primitives of the four ranges, each up to a constant of its own.
double first_primitive(double t) {
    return t * (425 + t * (7.73e-1 / 2 + t * (-1.69e-3 / 3 + t * (2.22e-6 / 4))));
}

double second_primitive(double t) {
    return 666 * t - 13'002 * std::log(738 - t);
}

double third_primitive(double t) {
    return 545 * t + 17'820 * std::log(t - 731);
}

/// ∫ c dT from 20 °C up to t, from 20 °C on.
double steel_content(double t) {
    static const double to_first = first_primitive(first_to_degC) - first_primitive(from_degC);
    static const double to_peak = to_first + second_primitive(peak_degC) - second_primitive(first_to_degC);
    static const double to_last = to_peak + third_primitive(last_from_degC) - third_primitive(peak_degC);
    static const double at_start = first_primitive(from_degC);
    if (t < first_to_degC)
        return first_primitive(t) - at_start;
    if (t < peak_degC)
        return to_first + second_primitive(t) - second_primitive(first_to_degC);
    if (t < last_from_degC)
        return to_peak + third_primitive(t) - third_primitive(peak_degC);
    return to_last + 650 * (t - last_from_degC);
}

double steel_lambda(double t) {
    return t < 800 ? 54 - 3.33e-2 * t : 27.3;
}

double steel_degrees(double kelvin) {
    return std::max(kelvin - factor::celsius_zero, from_degC);
}

} // namespace

double HeatCurves::c(double kelvin) const {
    return is_carbon_steel ? steel_c(steel_degrees(kelvin)) : constant_c;
}

double HeatCurves::lambda(double kelvin) const {
    return is_carbon_steel ? steel_lambda(steel_degrees(kelvin)) : constant_lambda;
}

double HeatCurves::e(double kelvin) const {
    const double over = kelvin - factor::celsius_zero - from_degC;
    if (!is_carbon_steel)
        return constant_c * over;
    return over < 0 ? steel_c(from_degC) * over : steel_content(over + from_degC);
}

SpecificHeat carbon_steel_specific_heat(Temperature at) {
    return in_si<SpecificHeat>(steel_c(steel_degrees(at.value())));
}

Conductivity carbon_steel_conductivity(Temperature at) {
    return in_si<Conductivity>(steel_lambda(steel_degrees(at.value())));
}

std::optional<HotMetal> hot_metal(const Base& base) {
    const Temperature usual = celsius(150);
    if (base.specific_heat && base.conductivity)
        return HotMetal{base.specific_heat->value, base.conductivity->value, base.density.value,
                        base.specific_heat->source};
    if (base.structure == "ferritic" || base.structure == "martensitic")
        return HotMetal{std::nullopt, carbon_steel_conductivity(usual), base.density.value, "EN1993-1-2"};
    return std::nullopt;
}

HeatCurves heat_curves(const HotMetal& metal) {
    return {!metal.constant, metal.constant ? metal.constant->value() : 0, metal.conductivity.value(),
            metal.density.value()};
}

} // namespace ringfill
