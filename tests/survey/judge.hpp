#pragma once

#include <cmath>
#include <functional>
#include <numbers>
#include <vector>

#include <gsl/gsl_integration.h>

#include <ringfill/units/quantity.hpp>

namespace ringfill::testing {

inline constexpr double turn = 2 * std::numbers::pi;

/// Integral of a smooth function by GSL's adaptive quadrature, to a relative 1e-11: the outside judge of
/// sections and volumes.
inline double integral(const std::function<double(double)>& f, double from, double to) {
    gsl_function call;
    call.function = [](double x, void* of) {
        return (*static_cast<const std::function<double(double)>*>(of))(x);
    };
    call.params = const_cast<std::function<double(double)>*>(&f);
    gsl_integration_workspace* space = gsl_integration_workspace_alloc(1000);
    double result = 0;
    double error = 0;
    gsl_integration_qag(&call, from, to, 0, 1e-11, 1000, GSL_INTEG_GAUSS61, space, &result, &error);
    gsl_integration_workspace_free(space);
    return result;
}

/// Section inside r(theta), half the integral of r squared over a turn. Any unit, squared.
inline double section_inside(const std::function<double(double)>& r) {
    return integral([&](double theta) { return r(theta) * r(theta) / 2; }, 0, turn);
}

/// An outline given in mm, read at N equal clock steps.
inline std::vector<Length> readings_of(const std::function<double(double)>& r_mm, std::size_t count) {
    std::vector<Length> readings;
    for (std::size_t i = 0; i < count; ++i)
        readings.push_back(millimetres(r_mm(turn * static_cast<double>(i) / static_cast<double>(count))));
    return readings;
}

inline double as_mm(Length length) {
    return length.value() * 1e3;
}

inline double as_mm2(Area area) {
    return area.value() * 1e6;
}

inline double as_mm3(Volume volume) {
    return volume.value() * 1e9;
}

} // namespace ringfill::testing
