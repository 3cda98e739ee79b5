#pragma once

#include <ringfill/heat/heat_run.hpp>

namespace ringfill {

/// How a boss is covered while it cools, and whether it is kept to the rate of its settings.
struct CoolingCover {
    bool boss = false;
    bool plates = false;
    bool keeps_rate = false;
};

/// Cools a boss to where roughing and finishing may begin, by the mean of its bore, where asked no
/// faster than the settings allow: the heater gives what a blanket does not keep. The walk ends where it is
/// cold.
BossCooling cool_down(BossWalk& walk, const HeatRunSettings& settings, CoolingCover cover);

/// Brings the mean of the bore down to a temperature [K], likewise; the time it takes, or nothing when it
/// does not within ten days.
std::optional<double> come_down(BossWalk& walk, const HeatRunSettings& settings, CoolingCover cover,
                                double kelvin);

} // namespace ringfill
