#pragma once

#include <vector>

#include <ringfill/caution/planned_work.hpp>
#include <ringfill/table/cutting.hpp>
#include <ringfill/take/needs.hpp>

namespace ringfill {

/// What is taken to a job, and what its work draws.
struct Taken {
    std::vector<Need> needs;      ///< without their workings
    std::vector<Working> working; ///< of all needs, each under "take[0]"
    Volume gas;                   ///< of all bores, without the reserve
    std::optional<Energy> drawn;  ///< nothing: not known of the arc or the electric heater of some bore
};

/// Everything to load for a job, in the order it is shown: wire, electrodes and rods, gas, tips, nozzles and
/// liners, sticks, fuel and oxygen, blankets, power, what holes and the boring bar need, the fire watch.
/// Throws Faulty (Origin::job) with what too_much() finds.
Taken take(const PlannedWork& work, const Shop& shop);

/// So much of one thing (kg, L or pieces) is refused: something in the job is far too large, and a quote
/// could not tell it exactly.
inline constexpr double too_much_of_one_thing = 1e12;

/// A fault for each thing of which a job needs so much.
std::vector<Fault> too_much(const std::vector<Need>& needs, UnitSystem units);

} // namespace ringfill
