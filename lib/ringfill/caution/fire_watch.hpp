#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/day/calendar.hpp>
#include <ringfill/table/cautions.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// A stretch of time with flame, arc, sparks or metal held hot, from the start of the first day.
struct HotSpan {
    Time from;
    Time to;
};

/// A stretch of time that is watched without a break, and the looks after it.
struct WatchPeriod {
    Time from;         ///< first flame
    Time last_heat;    ///< flame, arc or hold
    Time until;        ///< the watch goes
    Time looked_until; ///< from time to time; the same when no rule asks for it
};

/// How the fire is watched.
struct FireWatch {
    bool longest = true;            ///< the longest of all rule sets is taken; else the job names one
    std::vector<std::string> rules; ///< the sets that ask for as much
    Sourced<Time> after;            ///< the last heat
    Sourced<Length> clear;          ///< of what burns
    std::optional<Sourced<Time>> checks_for;
    std::optional<Sourced<Time>> checks_every;
    /// What other rule sets ask for beyond the one that the job names: "1 h 00 min, then looks for …"; empty:
    /// nothing.
    std::string others;
    /// By the clock of the day; empty when no day is laid out.
    std::vector<WatchPeriod> periods;
    Time total; ///< of the periods, without the looks
};

/// The rule of the fire watch: the set that the job names, or of each figure the longest of all.
/// Nothing when the table has no set of that name.
std::optional<FireWatch> fire_watch(const std::vector<FireRule>& rules,
                                    const std::optional<std::string>& asked, UnitSystem units);

/// By whose rule the fire is watched, and whether others ask for more.
std::string fire_rule_in_words(const FireWatch& watch);

/// Lays the watch over the hot spans, in any order: from each first flame to `after` its last heat. A pause
/// that is shorter than that is watched too.
void watch_over(FireWatch& watch, std::vector<HotSpan> spans);

} // namespace ringfill
