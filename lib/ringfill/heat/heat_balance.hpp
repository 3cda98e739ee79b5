#pragma once

#include <algorithm>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/heat/heat_run.hpp>
#include <ringfill/heat/heat_source.hpp>
#include <ringfill/heat/run_blocks.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

// One run where the job says what carries heat off the boss (carry_off, attached), else two, with nothing and
// with one plate as thick as the wall at mid length. The hot run serves rests, dwells, peak and the curve;
// the cold one warm-up, reheats, post-heat, fuel and the size of the heater; starts count the rests of the
// one and the reheats of the other, and times are the longer of both. A balance that cannot be worked out is
// absent with its reason in the notes; a run that breaks off tells only the parts it reached.

/// A boss with the plates that one run gives it, and how its heat goes.
struct BossRun {
    std::vector<Length> plates; ///< their thicknesses
    HeatRunSettings settings;
    HeatRun run;

    bool is_whole() const { return run.end == HeatEnd::done; } ///< it does not break off
};

/// The heat of one bore from the first flame to cold (section 9 of the computation). Where the job does not
/// say what carries heat off the boss, two runs stand at the ends of what may be: nothing does, or one plate
/// as thick as its wall.
struct HeatBalance {
    HeatSource heater;
    HotMetal metal;
    Temperature ambient;
    BossRun hot; ///< as the job says, or with nothing that carries heat off: rests, dwells, peak
    std::optional<BossRun> plated; ///< with the plate: warm-up, reheats, what the heater must give

    /// The run that asks for more heat.
    const BossRun& cold() const { return plated ? *plated : hot; }
    /// Whether the warm-up is told: the heater reaches the minimum in the run that asks for more heat.
    bool warms_up() const;
    /// The hottest that the boss as a whole gets in either run, or its outside as it is warmed; the place
    /// where a ring begins is told apart.
    Temperature peak() const;
    /// The hottest mean of the boss that a ring takes it to, in both runs.
    Temperature ring_peak() const { return std::max(hot.run.ring_peak, cold().run.ring_peak); }
    /// Breaks of the arc, each with a start after it: the rests of the one run and the reheats of the other,
    /// and after each stitch.
    int breaks() const { return std::max(0, hot.run.stitches - 1) + hot.run.rests + cold().run.reheats; }
    /// What the heater must put into the metal, losses included.
    Energy heater_heat() const;
    /// The most that the arc burns in any stretch of so long a time, in either run; all of it where one
    /// breaks off.
    Time busiest_arc(Time period) const;
};

/// How a balance ends, the worse of its runs.
HeatEnd end_of(const HeatBalance& balance);

/// What the heater must give off at least, over its efficiency: what would be warm in two hours where it is
/// too small, else what the warm boss loses, or the hold.
Power heater_needed(const HeatBalance& balance);

/// Finishing does not wait until the boss is closer to the air than this [K; own choice].
inline constexpr double over_air_K = 5;

/// The air of a job that does not say [common practice, no source].
inline const Temperature usual_ambient = in_si<Temperature>(293.15);

/// Whether the hold after welding follows only once the bore has cooled, as martensitic metal is tempered; it
/// is then no part of the balance.
bool tempers_once_cool(const BoreHeat& heat);

/// What a balance is worked out from.
struct BalanceCase {
    const WornBore& bore;
    const Build& build;
    const Base& base;
    const BoreHeat& heat;
    const std::vector<RingPass>& passes; ///< empty: too many to follow
    Temperature ambient;
    std::optional<HeatSource> heater;
    Temperature rough_below;  ///< of the shop's bar
    Temperature finish_below; ///< likewise
    Length pitch;             ///< of the bore's beads
    Time step_over;           ///< least pause between rings
    Time peening;             ///< of a stitch on iron that is laid cold
    Time cleaning;            ///< between layers
    Length blanket;           ///< thickness
};

/// The heat of a bore from the first flame to cold, or why it is not followed.
struct FollowedHeat {
    std::optional<HeatBalance> heat_balance;
    std::string no_balance; ///< why there is none, the end of a sentence

    int breaks() const { return heat_balance ? heat_balance->breaks() : 0; } ///< of the arc
};

/// The balance of each bore, or why there is none: no boss diameter, no figure of preheat, a minimum over its
/// maximum or too near to it, air too near to the maximum, no voltage or current, metal whose specific heat
/// nobody gives, too many rings, a boss so light that a ring would melt it. Each run of a bore is a block of
/// its own; their sequence changes nothing of the answer.
/// @param begins is called by the block, with the bore from 0, before a run; may be empty.
std::vector<FollowedHeat> follow_heat(const std::vector<BalanceCase>& cases, const RunBlocks& run_blocks = {},
                                      const std::function<void(std::size_t bore)>& begins = {});

/// The most that the arc burns in any stretch of a given length, whatever lies in between: what the duty of a
/// welding set is told by. @param arcs begin and end of each, in time. Period over 0.
Time busiest_arc(const std::vector<std::pair<Time, Time>>& arcs, Time period);

/// How the figures of a heat balance were reached (heat.boss_kg and so on, time.*). Times come from the
/// integration of the heat equation; its mean over the boss is told as time.curve with its value where the
/// first ring begins. What is added up from them is told as such.
std::vector<Working> balance_working(const WornBore& bore, const BoreWeld& weld, const HeatBalance& balance);

/// The longer cooling over the runs, by the way that is counted; nothing when a run does not get there.
std::optional<Time> longest_cooling(const HeatBalance& balance, std::optional<Time> BossCooling::*part);

/// From the first flame to where finishing may begin, each part the longest that may be, pauses as they are
/// told; nothing when a run does not end well.
std::optional<Time> total_time(const HeatBalance& balance, Time arc);

} // namespace ringfill
