#pragma once

#include <vector>

#include <ringfill/heat/boss_mesh.hpp>
#include <ringfill/heat/hot_metal.hpp>

namespace ringfill {

/// A ring that was laid, as the place where the next one begins still feels it; plain numbers in SI.
struct LaidRing {
    double depth = 0;     ///< z_r, of its middle from the near face
    double power = 0;     ///< P, into the metal
    double time = 0;      ///< t_r, of its arc
    double ended_ago = 0; ///< a, over 0
};

/// So many rings are felt.
inline constexpr std::size_t rings_felt = 3;

/// How much hotter the place is where a ring begins than the mean of the bore round its band, X [K]: the heat
/// of the last rings laid that has not yet gone round, each an arc that went once round the bore and ten
/// degrees more, as a moving source in a plate of the wall's thickness with images in its faces and ends
/// (section 9 of the computation). Not below 0.
/// @param depth of the band's middle. @param band_kelvin the bore there.
double start_spot_excess(const BossMesh& mesh, const HeatCurves& metal, const std::vector<LaidRing>& rings,
                         double depth, double band_kelvin);

} // namespace ringfill
