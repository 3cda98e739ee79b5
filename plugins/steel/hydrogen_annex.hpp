#pragma once

#include <optional>
#include <vector>

#include "question.hpp"

namespace ringfill::steel {

// The hydrogen-control annex of AWS D1.1 (annex XI in 2000-2008, I in 2010, H in 2015, B in 2020). Memory,
// but for the levels, the group of Pcm under 0.28 at level H2, and the 300 °F of group D, high restraint, 1
// 1/2 to 3 in, which were read.

/// Level of hydrogen by the limit of a class [ml/100 g]: 1 under 5, 2 under 10, otherwise 3.
int hydrogen_level(double hydrogen_ml_100g);

/// Susceptibility group A to G by the printed grid, for a Pcm [%] and a level of 1 to 3; nothing from
/// 0.38 % on.
std::optional<char> group_by_grid(double pcm_pct, int level);

/// Susceptibility index 12 Pcm + log10(H), for a Pcm [%] and hydrogen [ml/100 g].
double susceptibility_index(double pcm_pct, double hydrogen_ml_100g);

/// Group by the index; between two printed bands the higher one. Nothing over 7.0.
std::optional<char> group_by_index(double index);

/// Least preheat and interpass temperature [°F] for a group A to G, a restraint of 1 to 3 (low, medium, high)
/// and a thickness [in]. Nothing where it prints "< 65", none needed.
std::optional<double> annex_degF(char group, int restraint, double thickness_in);

/// What the annex says, a second opinion: it is an alternative to the minimum table. Past its last Pcm or
/// index its last group, G, is told as outside its range: by the grid too, since the group by a measured
/// figure would be G there. The grid is used with the hydrogen limit of a class, the index with a measured
/// figure. Unknown hydrogen is level H3, unknown restraint high, an unknown wall over 3 in.
Figure hydrogen_annex(const Asked& asked);

} // namespace ringfill::steel
