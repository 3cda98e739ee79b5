#pragma once

#include <optional>
#include <string>

#include <ringfill/job/worn_bore.hpp>
#include <ringfill/material/family.hpp>
#include <ringfill/survey/skim.hpp>

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

/// The boss as one lump of metal (section 9 of the computation).
struct Boss {
    Length outer_radius; ///< R_b
    Length wall;
    Mass mass;        ///< m_b = ρ π (R_b² − r_s²) L
    Area surface;     ///< outer cylinder, both faces and the bore
    Mass heated;      ///< m_b and a ring of 75 mm of each plate on it, which preheat warms too
    Conductance sink; ///< G, what flows off into the machine
    Mass part = {};   ///< of the whole casting, which is heated with it; 0: the boss alone
};

/// Convection in still air, h_c [W/(m² K); common practice, a handbook band of 5 to 25].
inline constexpr double still_air_W_m2K = 10;
/// Emissivity of scaled steel [oxidised steel 0.74 to 0.82 in emissivity tables, restated].
inline constexpr double scaled_emissivity = 0.8;
/// Stefan-Boltzmann constant [W/(m² K⁴); CODATA 2018, exact].
inline constexpr double stefan_boltzmann = 5.670374419e-8;
/// Convection and radiation together from a plate that carries heat off [W/(m² K); common practice, no
/// source].
inline constexpr double plate_W_m2K = 15;
/// How far from the boss a plate is warmed along [ISO 13916, AWS D1.1].
inline const Length warmed_ring = millimetres(75);

/// Heat that an endless annular fin of a plate's thickness carries off a boss, per kelvin: 2πλt · x
/// K₁(x)/K₀(x), x = R_b √(2h/(λt)) [W/K; the annular fin of heat-transfer textbooks]. R_b, t, λ over 0.
Conductance plate_sink(Length outer_radius, Length plate, Conductivity conductivity);

/// The boss with what stands on it. carry_off of the job rules over its plates.
/// @param plates their thicknesses. Needs boss_diameter.
Boss boss_of(const WornBore& bore, const Build& build, const HotMetal& metal,
             const std::vector<Length>& plates);

/// Biot number h V/(A λ) with h of convection and radiation at a temperature: over 0.1 the wall is not at one
/// temperature.
double biot_number(const Boss& boss, const HotMetal& metal, Temperature at, Temperature ambient);

} // namespace ringfill
