#pragma once

#include <cmath>
#include <numbers>

namespace ringfill::factor {

// Exact factors to SI, each by its definition. NIST SP 811 (2008 edition), appendix B, prints the same.
inline constexpr double inch = 0.0254;                        // m, exactly, since 1959
inline constexpr double foot = 12 * inch;                     // m
inline constexpr double thou = inch / 1000;                   // m
inline constexpr double pound = 0.45359237;                   // kg, exactly
inline constexpr double ounce = pound / 16;                   // kg
inline constexpr double litre = 1e-3;                         // m3
inline constexpr double gallon_us = 231 * inch * inch * inch; // m3, exactly
inline constexpr double cubic_foot = foot * foot * foot;
inline constexpr double cubic_inch = inch * inch * inch;
inline constexpr double minute = 60;                     // s
inline constexpr double hour = 3600;                     // s
inline constexpr double degree = std::numbers::pi / 180; // rad
inline constexpr double kelvin_per_fahrenheit = 5.0 / 9.0;
inline constexpr double celsius_zero = 273.15;                            // K
inline constexpr double fahrenheit_zero = 459.67 * kelvin_per_fahrenheit; // K

/// A temperature [K] without the last digits that its conversion leaves, so that 68 °F is 20 °C.
inline double settled_kelvin(double kelvin) {
    return std::round(kelvin * 1e12) / 1e12;
}

} // namespace ringfill::factor
