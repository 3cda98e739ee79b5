#include <ringfill/heat/waits.hpp>

namespace ringfill {
namespace {

/// A difference that is worth saying, as a share of what is waited [own choice].
constexpr double worth_saying = 0.25;

} // namespace

Time waits_for_heat(const BossRun& boss) {
    Time waits = boss.run.resting;
    for (const ToldDwell& dwell : boss.run.dwells)
        waits +=
            static_cast<double>(dwell.to_ring - dwell.from_ring + 1) * (dwell.told - boss.settings.step_over);
    return waits;
}

std::optional<ShorterWaits> shorter_with_plate(const HeatBalance& balance) {
    if (!balance.plated || balance.hot.settings.by_stitches || !balance.hot.is_whole() ||
        !balance.plated->is_whole())
        return std::nullopt;
    const ShorterWaits waits{balance.plated->plates.front(), waits_for_heat(balance.hot),
                             waits_for_heat(*balance.plated)};
    const bool are_long = waits.bare > long_waits_share * balance.hot.run.welding;
    return are_long && waits.plated <= (1 - worth_saying) * waits.bare ? std::optional(waits) : std::nullopt;
}

} // namespace ringfill
