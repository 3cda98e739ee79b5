#pragma once

#include "question.hpp"

namespace ringfill::steel {

/// Chemical carbon by Séférian C + (Mn + Cr)/9 + Ni/18 + 7 Mo/90 [%]. Source: D. Séférian, Métallurgie de la
/// soudure, 1959 (memory).
double chemical_carbon(const Composition& metal);

/// Total carbon by Séférian [%]: chemical carbon times 1 + 0.005 e for a thickness e [mm]. Source: as above.
double seferian_carbon(double chemical_carbon_pct, double thickness_mm);

/// What Séférian asks for, a second opinion: 350 sqrt([C] - 0.25) [°C], none for [C] up to 0.25. Knows
/// neither hydrogen nor heat input. Not usable outside 0.1 to 0.6 % C or over 5 % of alloy, and up to 0.25 %
/// C marked as outside its range; an unknown wall is taken as 90 mm. Source: as above (memory).
Figure seferian(const Asked& asked);

} // namespace ringfill::steel
