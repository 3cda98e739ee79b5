#include <ringfill/heat/arc_energy.hpp>

#include <array>
#include <cmath>
#include <utility>

#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr std::array<std::pair<std::string_view, double>, 10> efficiencies = {{{"121", 1.0},
                                                                               {"111", 0.8},
                                                                               {"114", 0.8},
                                                                               {"131", 0.8},
                                                                               {"135", 0.8},
                                                                               {"136", 0.8},
                                                                               {"137", 0.8},
                                                                               {"138", 0.8},
                                                                               {"141", 0.6},
                                                                               {"15", 0.6}}};

} // namespace

std::optional<double> thermal_efficiency(std::string_view iso_4063) {
    for (const auto& [process, k] : efficiencies)
        if (process == iso_4063)
            return k;
    return std::nullopt;
}

EnergyPerLength arc_energy(Voltage voltage, Current current, Speed travel) {
    return voltage * current / travel;
}

EnergyPerLength heat_input(double thermal_efficiency, EnergyPerLength arc_energy) {
    return thermal_efficiency * arc_energy;
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
