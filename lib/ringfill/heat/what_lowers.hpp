#pragma once

#include <vector>

#include <ringfill/heat/preheat.hpp>

namespace ringfill {

/// What would lower the minimum, and by how many K: a certificate at most down to the least that the formula
/// that rules asks for, a filler of 5 ml/100 g or, where it is that already, of 3, and a quarter more heat
/// input. Empty where a row rules that none of these moves.
/// @param ruled with its methods, one of which rules.
std::vector<Lowering> what_lowers(const Preheat& ruled, const HeatCase& heat_case);

} // namespace ringfill
