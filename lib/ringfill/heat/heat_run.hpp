#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/document/word_of.hpp>
#include <ringfill/heat/ring_times.hpp>
#include <ringfill/heat/thermal_history.hpp>

namespace ringfill {

/// What happens to the boss for a while.
enum class HeatStage { warm_up, weld, stop, reheat, post_heat, cool_to_rough, cool_to_finish };

template <>
inline constexpr std::string_view enum_words<HeatStage>[] = {
    "warm-up", "weld", "stop", "reheat", "post-heat", "cool to rough", "cool to finish"};

struct HeatStep {
    HeatStage stage = HeatStage::weld;
    std::string pass = {}; ///< of a ring; empty before the first and after the last
    int layer = 0;
    int after_ring = 0; ///< of that layer: a stop or reheat comes after it; welding ends with it
    Time time = {};
    Temperature from = {};
    Temperature to = {};
};

/// A point of the temperature curve, time from the start of the warm-up.
struct CurvePoint {
    Time time;
    Temperature temperature;
};

/// What the boss is held between and what goes into it.
struct HeatRunSettings {
    ThermalLump boss;
    Mass heated; ///< warmed up by the heater: the boss and what stands on it
    Temperature minimum;
    Temperature maximum; ///< not under the minimum
    /// From the second layer on, where that is not the same: minimum and maximum.
    std::optional<std::pair<Temperature, Temperature>> later = {};
    Power arc;                               ///< into the metal while the arc burns
    Power heater;                            ///< into the metal while it heats
    std::optional<Temperature> hold_at = {}; ///< post-heat
    Time hold_for = {};
    std::optional<double> warming_max_K_per_h = {}; ///< slow warm-up asked for
    bool in_stitches = false; ///< laid in short stitches, each begun again near the maximum
    std::optional<double> cooling_max_K_per_h = {};       ///< slow cooling asked for
    std::optional<Temperature> cooling_slow_down_to = {}; ///< and down to where; nothing: all the way
    Temperature rough_below;                              ///< roughing begins under this
    Temperature finish_below;                             ///< finishing and measuring under this
};

/// How a run ends.
enum class HeatEnd {
    done,
    heater_too_small, ///< cannot reach or hold what is asked for
    never_cools,      ///< the boss does not come down to where the arc, or the hold, may begin
    never_cold,       ///< it was welded, and does not come down to where boring or measuring may begin
};

template <>
inline constexpr std::string_view enum_words<HeatEnd>[] = {
    "done", "the heater is too small", "the boss does not cool to where the work may go on",
    "the boss does not cool to where boring or measuring may begin"};

/// The heat of one bore from the first flame to cold (section 9 of the computation).
struct HeatRun {
    HeatEnd end = HeatEnd::done;
    Temperature end_at; ///< what could not be reached, when the run did not end well
    std::vector<HeatStep> steps;
    std::vector<CurvePoint> curve;
    int stops = 0;
    int reheats = 0;
    Time warm_up;
    Time waiting; ///< in stops
    Time reheating;
    Time welding; ///< arc time
    Time post_heating;
    std::optional<Time> cooling_to_rough;  ///< after the last ring or the hold; nothing: it never gets there
    std::optional<Time> cooling_to_finish; ///< after that
    Temperature welding_begins;
    Temperature welding_ends;
    Temperature peak;
    Temperature ring_peak; ///< that of the rings alone, without warm-up, reheats and hold
    Energy warm_up_heat;   ///< into the metal
    Energy arc_heat;       ///< likewise
    Energy reheat_heat;    ///< likewise
    Energy post_heat_heat; ///< likewise
    Energy slow_heat;      ///< likewise, to keep the cooling slow where no blanket does it
    Energy lost_warming;   ///< during the warm-up
    Energy lost;           ///< while welding, stops and reheats included, as far as it goes
};

/// After a stop the boss is this far under the maximum, after a reheat this far over the minimum, or at the
/// other limit if that comes first [K; common practice, no source].
inline constexpr double stop_depth_K = 50;
inline constexpr double reheat_depth_K = 25;
/// A stop ends no closer to the air than this [K; common practice, no source].
inline constexpr double over_air_K = 5;
/// A stitch on cold iron begins once this share of the way from the air to the maximum is left [own choice].
inline constexpr double stitch_share = 2.0 / 3;

/// What a reheat goes up to.
inline Temperature reheated_to(const HeatRunSettings& settings) {
    return std::min(settings.maximum, in_si<Temperature>(settings.minimum.value() + reheat_depth_K));
}

/// Follows the boss ring by ring: a ring begins only between the limits, with a stop or a reheat before it
/// where that is needed. The lump may pass the maximum within a ring.
HeatRun heat_run(const HeatRunSettings& settings, const std::vector<RingPass>& passes);

} // namespace ringfill
