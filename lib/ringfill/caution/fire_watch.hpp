#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/day/day_plan.hpp>
#include <ringfill/table/cautions.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// A stretch of time with flame, arc, sparks or metal held hot, from the start of the first day.
struct HotSpan {
    Time from;
    Time to;
    Time slowed = {};       ///< its end, while a heater slows the cooling
    std::string piece = {}; ///< one of several alike
};

/// A stretch of time that is watched without a break, and the looks after it.
struct WatchPeriod {
    Time from;         ///< first flame
    Time last_heat;    ///< flame, arc or hold
    Time until;        ///< the watch goes
    Time looked_until; ///< from time to time; the same when no rule asks for it
};

/// How long and how far the fire is watched.
struct WatchRule : FireRule {
    bool longest = true;            ///< the longest of all rule sets is taken; else the job names one
    std::vector<std::string> rules; ///< the sets that ask for as much
    /// What other rule sets ask for beyond the one that the job names: "1 h 00 min, then looks for …"; empty:
    /// nothing.
    std::string others;
};

/// The fire watch by the clock of the day.
struct FireWatch : WatchRule {
    std::vector<WatchPeriod> periods; ///< empty when no day is laid out
    Time total;                       ///< of the periods, without the looks
};

/// The set that the job names, or of each figure the longest of all. A name that the table does not have is
/// noted as a fault.
std::optional<WatchRule> watch_rule(const std::vector<FireRule>& rules,
                                    const std::optional<std::string>& asked, UnitSystem units,
                                    std::vector<Fault>& faults);

/// By whose rule the fire is watched, and whether others ask for more.
std::string fire_rule_in_words(const WatchRule& rule);

/// The watch over the hot spans, in any order: from each first flame to `after` its last heat. A pause that
/// is shorter than that is watched too.
FireWatch watch_over(const WatchRule& rule, std::vector<HotSpan> spans);

/// How long a heater slows the cooling of a bore after its last ring and hold; 0: none does.
Time slowed_by_heater(const HeatBalance& balance);

/// Each piece of a day from its first flame to its last ring or hold, and on while a flame slows its cooling.
std::vector<HotSpan> hot_pieces(const Schedule& day, const std::vector<BorePlan>& bores);

/// Who stays with a heater, and which watch goes on after the working day, in sentences.
std::vector<std::string> fire_watch_notes(const FireWatch& watch, const DayPlan& day,
                                          const std::vector<BorePlan>& bores);

/// How the figures of the fire watch were reached (fire_watch.*).
std::vector<Working> fire_watch_working(const FireWatch& watch);

} // namespace ringfill
