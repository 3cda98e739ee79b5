#pragma once

#include <optional>

#include <ringfill/heat/heat_balance.hpp>

namespace ringfill {

/// What is waited for the heat alone between rings of a layer, as it is told: dwells past the step-over, and
/// rests.
Time waits_for_heat(const BossRun& boss);

/// How far a plate on the boss shortens its waits.
struct ShorterWaits {
    Length plate; ///< its thickness
    Time bare;    ///< waits with nothing on the boss
    Time plated;  ///< with the plate
};

/// Waits count as long from this share of the arc time on [own choice].
inline constexpr double long_waits_share = 0.25;

/// What the plate saves where the job does not say what carries heat off: where the waits are long and a
/// quarter of them at least would go. Nothing for stitches, which wait for the whole part.
std::optional<ShorterWaits> shorter_with_plate(const HeatBalance& balance);

} // namespace ringfill
