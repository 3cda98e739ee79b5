#pragma once

#include <vector>

#include <ringfill/heat/hot_metal.hpp>
#include <ringfill/heat/surface_loss.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/survey/skim.hpp>

namespace ringfill {

/// The boss as one lump of metal (section 9 of the computation).
struct Boss {
    Length outer_radius; ///< R_b
    Length wall;
    Mass mass;        ///< m_b = ρ π (R_b² − r_s²) L
    Area surface;     ///< outer cylinder, both faces and the bore
    Mass heated;      ///< m_b and a ring of 75 mm of each plate on it, which preheat warms too
    Conductance sink; ///< G, what flows off into the machine
};

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
