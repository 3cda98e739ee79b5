#pragma once

#include <string>
#include <vector>

#include <ringfill/heat/ring_window.hpp>

namespace ringfill {

/// Writes a run down as it goes on: its steps, its curve, its pauses as they are told.
class HeatLog {
  public:
    /// @param run is written to, both outlive it.
    HeatLog(HeatRun& run, BossWalk& walk, Time step_over) : run_(run), walk_(walk), step_over_(step_over) {
        walk.trace(&trace_);
        note();
    }

    /// Mean of the boss.
    Temperature mean() const;

    /// A point of the curve, with what the walk has traced up to here.
    void note();

    /// A step that began at a time [s] and a temperature and ends here.
    void add(HeatStage stage, double began, Temperature from);

    /// Cooling by the mean of the bore, where it takes time.
    void add_cooling(HeatStage stage, const std::optional<Time>& time, Temperature from, Temperature to);

    void begin_layer(const RingPass& pass);
    void end_layer();

    /// The next turn of a helix follows at once.
    void add_turn() { pauses_.push_back({}); }
    /// A pause that began at a time [s] and a temperature and ends here; before the first ring of a layer it
    /// lies between layers.
    void add_pause(const RingPause& pause, double began, Temperature from);
    /// A ring that began at a time [s] and ends here.
    void add_ring(double began);

    /// Whether a ring was laid.
    bool has_begun() const { return !pass_.empty(); }

  private:
    struct Pause {
        std::optional<Time> dwell; ///< nothing: told apart, or none
        Time least;
    };

    HeatStep here(HeatStage stage) const;
    void end_welding(double at, Temperature to);
    void tell_dwells();
    ToldDwell told_dwell_of(DwellStretch stretch, const std::vector<std::optional<Time>>& own) const;

    HeatRun& run_;
    BossWalk& walk_;
    Time step_over_;
    BossTrace trace_ = {};
    std::string next_pass_ = {}; ///< of the layer in hand
    int next_layer_ = 0;
    std::string pass_ = {}; ///< of the last ring laid
    int layer_ = 0;
    int ring_ = 0;
    int rings_in_layer_ = 0;
    bool in_stitches_ = false;
    std::vector<Pause> pauses_ = {}; ///< of the layer in hand, after each ring
    bool is_welding_ = false;
    Temperature welding_from_ = {};
    double welding_began_ = 0;
    Time arc_ = {};
};

} // namespace ringfill
