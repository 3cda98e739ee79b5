#pragma once

#include <vector>

#include <ringfill/heat/heat_run.hpp>
#include <ringfill/heat/start_spot.hpp>

namespace ringfill {

/// A wait or a reheat between two rings.
struct BetweenRings {
    bool is_reheat = false;
    double seconds = 0;
    double from = 0; ///< mean of the boss [K]
    double to = 0;
};

/// What comes between two rings.
struct RingPause {
    HeatEnd end = HeatEnd::done; ///< otherwise no further ring begins
    double least = 0;            ///< step-over or cleaning [s]
    double waited = 0;           ///< past that
    std::vector<BetweenRings> parts = {};
    double start_spot = 0;     ///< where the next ring begins; of the part before a stitch [K]
    double band = 0;           ///< mean round its band [K]
    bool is_told_apart = true; ///< as a rest, where it is long

    bool is_rest() const { return is_told_apart && waited > longest_dwell.value(); }
};

/// Keeps a boss between minimum and maximum before each ring (section 9 of the computation).
class RingWindow {
  public:
    /// @param settings outlive it.
    explicit RingWindow(const HeatRunSettings& settings)
        : settings_(settings), minimum_(settings.minimum.value()), maximum_(settings.maximum.value()) {}

    /// Other limits from now on.
    void limit_to(Temperature minimum, Temperature maximum) {
        minimum_ = minimum.value();
        maximum_ = maximum.value();
    }

    /// The arc goes out; waits and reheats until the next ring may begin at a depth [m].
    RingPause come_between(BossWalk& walk, double least, double depth);

    /// Whether a helix may go on with its next turn: the band under it is between the limits.
    bool may_go_on(const BossWalk& walk, double depth) const;

    /// Lays a ring of so many seconds over a band.
    void lay(BossWalk& walk, double seconds, const BoreBand& band);

    /// The load of a boss without arc while rings are laid.
    BossLoad between() const;

    /// What the heater does by itself while rings are laid, where it stays on.
    void let_heater_stay(BossWalk& walk) const;

  private:
    double spot(const BossWalk& walk, double depth) const;
    double over_limit(const BossWalk& walk, double depth) const;
    bool warm_again(BossWalk& walk, RingPause& pause, double& cold_time) const;
    bool wait(BossWalk& walk, RingPause& pause, double depth) const;

    const HeatRunSettings& settings_;
    double minimum_;                  ///< [K]
    double maximum_;                  ///< [K]
    std::vector<LaidRing> laid_ = {}; ///< the last ones; ended_ago holds when they ended
    std::size_t rings_ = 0;
};

} // namespace ringfill
