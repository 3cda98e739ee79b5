#pragma once

#include <vector>

#include <ringfill/take/take.hpp>

namespace ringfill {

/// What flames burn, and what arc, electric heater and boring bar draw.
struct EnergyUse {
    std::vector<FuelUse> fuels;
    std::vector<PowerUse> procedures;
    MainsUse mains;
};

/// A bore without a balance is welded without a rest; like one whose run breaks off it gives no figure of
/// fuel, which its line says.
EnergyUse energy_use(const PlannedWork& work, const Shop& shop);

} // namespace ringfill
