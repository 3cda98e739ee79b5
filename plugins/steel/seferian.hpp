#pragma once

#include "question.hpp"

namespace ringfill::steel {

/// Total carbon by Séférian [%]: chemical carbon C + (Mn + Cr)/9 + Ni/18 + 7 Mo/90, times 1 + 0.005 e for a
/// thickness e [mm]. Source: D. Séférian, Métallurgie de la soudure, 1959 (memory).
double seferian_carbon(const Composition& metal, double thickness_mm);

/// What Séférian asks for, a second opinion: 350 sqrt([C] - 0.25) [°C], none for [C] up to 0.25. Knows
/// neither hydrogen nor heat input. Not usable outside 0.1 to 0.6 % C; an unknown wall is taken as 90 mm.
/// Source: as above (memory).
Figure seferian(const Asked& asked);

} // namespace ringfill::steel
