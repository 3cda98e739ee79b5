#pragma once

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// Convection in still air, h_c [W/(m² K); common practice, a handbook band of 5 to 25].
inline constexpr double still_air_W_m2K = 10;
/// Emissivity of scaled steel [oxidised steel 0.74 to 0.82 in emissivity tables, restated].
inline constexpr double scaled_emissivity = 0.8;
/// Stefan-Boltzmann constant [W/(m² K⁴); CODATA 2018, exact].
inline constexpr double stefan_boltzmann = 5.670374419e-8;
/// Conductivity of a blanket of ceramic fibre [W/(m K); from memory 0.06 at 200 °C to 0.12 at 400 °C].
inline constexpr double blanket_W_mK = 0.09;
/// The blanket of a job that does not tell of it [common practice, no source].
inline const Length usual_blanket = millimetres(25);

/// Emissivity ε_x of the bore at a depth, 1/ε_x = 1/ε − 1 + 1/F, F the share of its sight that goes out by
/// the two ends: f(z/D) + f((L − z)/D), f(x) = (x² + ½)/√(x² + 1) − x [view factor from an element of a
/// cylinder's wall to its end, heat transfer textbooks]. All in one unit of length, D over 0.
double bore_emissivity(double depth, double length, double diameter);

/// What a square metre of bare metal loses for each kelvin over the air [W/(m² K)], temperatures in kelvin.
inline double bare_W_m2K(double emissivity, double at, double ambient) {
    return still_air_W_m2K + emissivity * stefan_boltzmann * (at * at + ambient * ambient) * (at + ambient);
}

} // namespace ringfill
