#pragma once

#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/take/need.hpp>

namespace ringfill {

/// So much of one thing (kg, L or pieces) is refused: something in the job is far too large, and a quote
/// could not tell it exactly.
inline constexpr double too_much_of_one_thing = 1e12;

/// A fault for each thing of which a job needs so much.
std::vector<Fault> too_much(const std::vector<Need>& needs);

} // namespace ringfill
