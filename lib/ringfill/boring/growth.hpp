#pragma once

#include <optional>
#include <utility>

#include <ringfill/table/sourced.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// Sizes hold at 20 °C [ISO 1].
inline constexpr double reference_temperature_degC = 20;

/// How much a diameter grows from 20 °C to a temperature, α D ΔT [m]; less than nothing below 20 °C.
/// @param expansion α [1/K].
Length growth(Length diameter, double expansion, Temperature at);

/// What a gauge that is itself at 20 °C must read in a bore that is not, so that it has its size at 20 °C.
struct GaugeReading {
    Temperature at;
    std::string source; ///< of the temperature
    Length growth;
    Length reading = {};                                  ///< of the diameter bored to
    std::optional<std::pair<Length, Length>> limits = {}; ///< of the limits of size, where there are any
};

} // namespace ringfill
