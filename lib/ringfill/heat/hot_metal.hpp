#pragma once

#include <optional>
#include <string>

#include <ringfill/material/family.hpp>
#include <ringfill/units/quantity.hpp>

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
    /// λ(T): of carbon steel where c is, else constant.
    Conductivity conductivity_at(Temperature at) const {
        return constant ? conductivity : carbon_steel_conductivity(at);
    }
};

/// The figures of the base metal: the table's own, or for ferritic and martensitic steel those of carbon
/// steel. Nothing where neither is known.
std::optional<HotMetal> hot_metal(const Base& base);

/// What a metal is to a numeric kernel: plain numbers of temperatures in kelvin. Carbon steel by EN 1993-1-2,
/// or constant.
struct HeatCurves {
    bool is_carbon_steel = true;
    double constant_c = 0;      ///< [J/(kg K)], where it is not carbon steel
    double constant_lambda = 0; ///< [W/(m K)], likewise
    double density = 0;         ///< [kg/m³]

    double c(double kelvin) const;      ///< specific heat [J/(kg K)]
    double lambda(double kelvin) const; ///< conductivity [W/(m K)]
    double e(double kelvin) const;      ///< heat content over 20 °C, ∫ c dT in closed form [J/kg]
};

HeatCurves heat_curves(const HotMetal& metal);

} // namespace ringfill
