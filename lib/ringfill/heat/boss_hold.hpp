#pragma once

#include <ringfill/heat/heat_run.hpp>

namespace ringfill {

/// How a hold after the last ring went.
struct BossHold {
    HeatEnd end = HeatEnd::done;
    Time time;   ///< coming there included
    Energy heat; ///< into the metal
    Power lost;  ///< as it ends: what holds it
};

/// Brings a boss to its hold, down or up, and holds its coldest place there by giving what the boss loses. It
/// is bare, or under the blanket of a heater that stays. @param settings with a hold. @param rule of its
/// warm-up.
BossHold hold_hot(BossWalk& walk, const HeatRunSettings& settings, WarmUpRule rule);

} // namespace ringfill
