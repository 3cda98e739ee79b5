#pragma once

#include <vector>

#include <ringfill/caution/fire_watch.hpp>
#include <ringfill/take/need.hpp>

namespace ringfill {

/// The person who watches the fire and the extinguisher in hand: neither is the one who welds, nor the one on
/// the machine.
std::vector<Need> take_fire_watch(const FireWatch& watch);

} // namespace ringfill
