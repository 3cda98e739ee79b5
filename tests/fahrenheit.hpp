#pragma once

#include <ringfill/units/factor.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill::testing {

/// A temperature from its figure in degrees Fahrenheit, to where a job's own is settled.
inline Temperature fahrenheit(double degrees) {
    return in_si<Temperature>(
        factor::settled_kelvin(degrees * factor::kelvin_per_fahrenheit + factor::fahrenheit_zero));
}

} // namespace ringfill::testing
