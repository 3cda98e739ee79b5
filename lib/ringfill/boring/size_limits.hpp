#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/table/size_limits.hpp>
#include <ringfill/table/sourced.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// What a finished bore may measure at 20 °C.
struct SizeLimits {
    Length low = {};             ///< diameter
    Length high = {};            ///< diameter
    std::string size_class = {}; ///< such as H9; empty: the job gives the limits themselves
    double lower_um = 0;         ///< deviation of the lower limit from the nominal size
    double tolerance_um = 0;     ///< between the limits
    std::string source = "job";
};

/// The limits of a bore: its explicit ones, or those of its ISO 286 class; nothing when the job gives
/// neither. A hole H lies from the nominal size up, JS half to either side, the others of the table from
/// their deviation up. Noted as a fault: a class or size that the table does not know, with what it knows.
std::optional<SizeLimits> size_limits(const WornBore& bore, const std::vector<SizeStep>& steps,
                                      std::vector<Fault>& faults);

/// The diameter to bore to: the finish diameter, moved to the nearer limit where its class lies beside it
/// (D to G).
Length diameter_to_bore(Length finish_diameter, const std::optional<SizeLimits>& limits);

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
