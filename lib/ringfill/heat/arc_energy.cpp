#include <ringfill/heat/arc_energy.hpp>

#include <cmath>

#include <ringfill/units/metric.hpp>

namespace ringfill {

double thermal_efficiency(std::string_view process) {
    return process == "torch_brazing" ? 0 : process == "gas_tungsten_arc" ? 0.6 : 0.8;
}

EnergyPerLength heat_input(double thermal_efficiency, Voltage voltage, Current current, Speed travel) {
    return thermal_efficiency * (voltage * current / travel);
}

std::optional<CoolingTime> cooling_time(EnergyPerLength heat_input, Temperature start, Length wall) {
    const double q = kj_mm(heat_input);
    const double t = deg_c(start);
    const double d = mm(wall);
    if (!(q > 0) || !(d > 0) || !(t < 500))
        return std::nullopt;
    const double to_500 = 1 / (500 - t);
    const double to_800 = 1 / (800 - t);
    CoolingTime found;
    found.thick = in_si<Time>((6700 - 5 * t) * q * (to_500 - to_800));
    found.thin = in_si<Time>((4300 - 4.3 * t) * 1e5 * q * q / (d * d) * (to_500 * to_500 - to_800 * to_800));
    found.transition =
        millimetres(std::sqrt((4300 - 4.3 * t) / (6700 - 5 * t) * 1e5 * q * (to_500 + to_800)));
    found.is_thick = wall > found.transition;
    return found;
}

} // namespace ringfill
