#pragma once

#include <optional>
#include <string>

#include <ringfill/material/family.hpp>

namespace ringfill {

/// Specific heat of carbon steel c(T) [J/(kg K); EN 1993-1-2:2005, 3.4.1.2; restated in articles]. Constant
/// below 20 °C; up to 1,200 °C, above that the value there.
SpecificHeat carbon_steel_specific_heat(Temperature at);

/// Conductivity of carbon steel λ(T) [W/(m K); EN 1993-1-2:2005, 3.4.1.3; restated]. Constant below 20 °C.
Conductivity carbon_steel_conductivity(Temperature at);

/// How a metal takes up and passes on heat.
struct HotMetal {
    std::optional<SpecificHeat> constant; ///< nothing: c(T) of carbon steel
    Conductivity conductivity;            ///< at 150 °C
    Density density;
    std::string source; ///< of the specific heat, key of the bibliography

    SpecificHeat specific_heat(Temperature at) const {
        return constant ? *constant : carbon_steel_specific_heat(at);
    }
};

/// The figures of the base metal: the table's own, or for ferritic and martensitic steel those of carbon
/// steel. Nothing where neither is known.
std::optional<HotMetal> hot_metal(const Base& base);

} // namespace ringfill
