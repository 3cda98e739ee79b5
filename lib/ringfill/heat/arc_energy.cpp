#include <ringfill/heat/arc_energy.hpp>

#include <array>
#include <utility>

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

} // namespace ringfill
