#pragma once

#include <vector>

#include <ringfill/heat/heat_run.hpp>

namespace ringfill {

/// The most that the arc burns in any stretch of a given length, whatever lies in between: what the duty of a
/// welding set is told by. Period over 0.
Time busiest_arc(const std::vector<HeatStep>& steps, Time period);

} // namespace ringfill
