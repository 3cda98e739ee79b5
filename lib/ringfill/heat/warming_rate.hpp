#pragma once

#include <optional>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// A warm-up: how long it takes, what the heater puts into the metal, and what of it is lost meanwhile.
struct Warming {
    Time time;
    Energy heat;
    Energy lost;
};

/// A warm-up that rises no faster than a rate [K/h]: it takes as much longer and loses as much more. One that
/// is slower by itself comes back as it is, and so does one without a rate.
/// @param rise_K over 0.
Warming kept_to_rate(const Warming& fast, double rise_K, std::optional<double> most_K_per_h);

} // namespace ringfill
