#pragma once

#include <optional>

#include <ringfill/heat/boss_walk.hpp>

namespace ringfill {

/// How a boss is brought to a temperature; plain numbers in SI, temperatures in kelvin.
struct WarmUpRule {
    double bore = 0;                    ///< the coldest bore cell is brought to this
    double skin = 0;                    ///< the outside is kept under this
    double power = 0;                   ///< of the heater, into the metal [W]
    std::optional<double> fastest = {}; ///< the mean of the boss rises no faster [K/s]
    double most_seconds = 0;
    bool wrapped = false; ///< outside and ends, by a heater that stays on under its blanket
};

/// How that went.
struct WarmedUp {
    bool is_ready = false;
    bool skin_waited = false; ///< the heater was turned off for the skin: equalising time
    Time time;                ///< until ready
    Time heating;             ///< of that with the heater on
    Temperature skin;         ///< then
    Temperature bore;         ///< mean of the bore
    Temperature mean;         ///< of the boss
    Energy heat;              ///< into the metal
    Energy lost;
};

/// The outside cools by so much before the heater, turned off for its sake, is lit again [K; own choice].
inline constexpr double skin_falls_K = 10;

/// Heats until the coldest bore cell is where the rule says, turning the heater off whenever the outside is
/// too hot. Nothing is done where it is there already. The heater is off afterwards.
WarmedUp warm_up(BossWalk& walk, const WarmUpRule& rule);

/// The rest of a casting warms along with its boss: what it takes up is put in as well by the same heater,
/// without its losses, and told in the warm-up. @return that heat.
Energy warm_the_rest(BossWalk& walk, WarmedUp& warm, Mass rest, Power heater);

/// The least power [W], into the metal, that would be ready within two hours: from the rule's own up to 64
/// times as much, to 1 %. Nothing when none is.
std::optional<double> least_power(BossEquation& equation, WarmUpRule rule);

} // namespace ringfill
