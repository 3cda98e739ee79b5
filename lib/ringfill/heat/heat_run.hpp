#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/document/word_of.hpp>
#include <ringfill/heat/boss_mesh.hpp>
#include <ringfill/heat/dwells.hpp>
#include <ringfill/heat/hot_metal.hpp>
#include <ringfill/heat/ring_times.hpp>
#include <ringfill/heat/warm_up.hpp>

namespace ringfill {

/// What happens to the boss for a while.
enum class HeatStage {
    warm_up,
    make_ready,
    weld,
    clean,
    rest,
    reheat,
    post_heat,
    cool_to_rough,
    cool_to_finish
};

template <>
inline constexpr std::string_view enum_words<HeatStage>[] = {"warm-up",   "make ready",    "weld",
                                                             "clean",     "rest",          "reheat",
                                                             "post-heat", "cool to rough", "cool to finish"};

/// A stretch of a run; temperatures are means of the boss.
struct HeatStep {
    HeatStage stage = HeatStage::weld;
    std::string pass = {}; ///< of a ring; empty before the first and after the last
    int layer = 0;
    int after_ring = 0; ///< of that layer: a rest or reheat comes after it; welding ends with it
    Time time = {};     ///< with the pauses between its rings as they are needed
    Temperature from = {};
    Temperature to = {};
    Time arc = {};            ///< of welding
    Time told = {};           ///< pauses between its rings as the user is told to keep them
    bool in_stitches = false; ///< which are counted then instead of rings
};

/// A point of the curve, time from the start of the warm-up, mean of the boss.
struct CurvePoint {
    Time time;
    Temperature temperature;
};

/// What the boss is held between and what goes into it.
struct HeatRunSettings {
    BossShape boss;
    HotMetal metal;
    Temperature ambient;
    Temperature minimum;
    Temperature maximum; ///< at least 15 K over the minimum, more than 20 K over the ambient
    /// From the second layer on, where that is not the same: minimum and maximum.
    std::optional<std::pair<Temperature, Temperature>> later = {};
    Power arc;                 ///< into the metal while the arc burns
    Power heater;              ///< into the metal while it heats
    bool heater_stays = false; ///< on the boss, while it is welded
    std::optional<double> heating_max_K_per_h = {};
    Temperature skin;         ///< the outside gets no hotter by the heater
    Time start_delay = {};    ///< from heater off to the first arc
    Time step_over = {};      ///< least pause between rings
    Time cleaning = {};       ///< between layers
    Length blanket = {};      ///< thickness, over 0
    bool by_stitches = false; ///< iron that is laid cold; its boss stands for the whole casting
    Mass part = {};           ///< of the whole casting, where it is more than the boss
    std::optional<Temperature> hold_at = {}; ///< post-heat
    Time hold_for = {};
    std::optional<double> cooling_max_K_per_h = {}; ///< slow cooling asked for: it cools under a blanket
    std::optional<Temperature> cooling_slow_down_to = {}; ///< and down to where; nothing: all the way
    Temperature rough_below;                              ///< roughing begins under this
    Temperature finish_below;                             ///< finishing and measuring under this
};

/// How a run ends.
enum class HeatEnd {
    done,
    heater_too_small, ///< not warm in time
    skin_in_the_way,  ///< likewise, since the outside must not get hotter
    window_not_held,  ///< it falls under the minimum while it is welded
    never_cools,      ///< the boss does not come down to where the arc, or the hold, may begin
    never_cold,       ///< it was welded, and does not come down to where boring or measuring may begin
    melts,            ///< one ring takes the whole boss past what it bears
};

template <>
inline constexpr std::string_view enum_words<HeatEnd>[] = {
    "done",
    "the heater is too small",
    "the limit of the outside stands in the way of the warm-up",
    "heat spread evenly does not hold the boss over its minimum",
    "the boss does not cool to where the work may go on",
    "the boss does not cool to where boring or measuring may begin",
    "the boss is so light that one ring would melt it"};

/// The dwell told for some rings of a layer.
struct ToldDwell {
    std::string pass;
    int layer = 0;
    int from_ring = 0; ///< the pause after this ring
    int to_ring = 0;   ///< and after all up to this
    Time longest;      ///< that one of them needs
    Time told;
};

/// How a boss cools, by the mean of its bore, from the end of the last ring or of the hold.
struct BossCooling {
    std::optional<Time> to_rough;  ///< nothing: it never gets there
    std::optional<Time> to_finish; ///< after that
    Energy heat;                   ///< by which the heater keeps it slow [J]
    Time slowed;                   ///< from its begin to the heater's end
};

/// What a heater that stays on did while the rings were laid.
struct HeldHeat {
    double duty = 0; ///< share of the time with the heater on
    Power mean;      ///< into the metal
};

/// The heat of one bore from the first flame to cold (section 9 of the computation).
struct HeatRun {
    HeatEnd end = HeatEnd::done;
    Temperature end_at;          ///< what could not be reached, when the run did not end well
    std::optional<Power> needed; ///< into the metal: what would do where the heater does not
    std::vector<HeatStep> steps;
    std::vector<CurvePoint> curve;
    WarmedUp warm_up;
    Time delay;       ///< from then to the first arc
    int stitches = 0; ///< laid instead of rings; 0: rings
    int rests = 0;
    int reheats = 0;
    Time resting; ///< in rests
    Time reheating;
    Time welding;      ///< arc time
    Time pausing;      ///< between rings and layers, as needed, rests and reheats apart
    Time told_pausing; ///< as told
    Time post_heating;
    std::vector<ToldDwell> dwells; ///< longer than the step-over
    std::optional<HeldHeat> held;
    BossCooling bare;
    BossCooling wrapped;                            ///< the boss under a blanket
    std::optional<BossCooling> wrapped_with_plates; ///< likewise its plates, where it has any
    bool cools_wrapped = false;                     ///< as counted in the steps and the day
    Temperature welding_begins;
    Temperature welding_ends;
    Temperature peak;          ///< the hottest mean of the boss
    Temperature ring_peak;     ///< while rings are laid
    Temperature hottest_start; ///< the hottest place where a ring began
    double start_excess_K = 0; ///< how far that was over the mean round its band
    Power begin_loss;          ///< to air, machine and plates as the first ring begins
    double begin_capacity = 0; ///< what a kelvin more takes then, Σ m c(T) [J/K]
    Power to_hold;             ///< the most the heater must give to hold the warm boss, or the hold
    Energy warm_up_heat;       ///< into the metal
    Energy arc_heat;           ///< likewise
    Energy reheat_heat;        ///< likewise, or what a heater that stays gave while welding
    Energy post_heat_heat;     ///< likewise
    Energy lost;               ///< up to the end of the last ring
    Energy stored;             ///< in the boss and its plates then, over what the air gives
    Mass boss;                 ///< m_b
    std::vector<std::pair<Time, Time>> arcs; ///< begin and end of each, from the start of the warm-up

    const BossCooling& cooling() const { return cools_wrapped ? wrapped : bare; }
};

/// After a reheat the boss is this far over the minimum, or half the window [K; own choice].
inline constexpr double reheat_depth_K = 25;
/// A ring begins so far under the maximum at least: what the start spot may be out by [K; section 9].
inline constexpr double start_margin_K = 8;
/// A window whose maximum lies so little over the air is not run [K; own choice].
inline constexpr double least_over_air_K = 20;
/// A pause longer than its least by more than this is listed as a rest.
inline const Time longest_dwell = in_si<Time>(90);

/// What a reheat goes up to.
Temperature reheated_to(Temperature minimum, Temperature maximum);

/// Follows the boss ring by ring: a ring begins only between the limits, with a pause, a rest or a reheat
/// before it where that is needed.
HeatRun heat_run(const HeatRunSettings& settings, const std::vector<RingPass>& passes);

} // namespace ringfill
