#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>
#include <ringfill/report/text/sentence.hpp>

namespace ringfill {

/// The work by the clock, day after day: what is done on which bore, what is waited for, the nights; the
/// welding of a bore is one line. Then what taking turns saves, the share of the arc, and the visit for the
/// crack test.
std::string day_text(const Plan& plan, const Style& style);

/// When all is done, what taking turns saves, the share of the arc, and the visit for the crack test.
Sentences day_sentences(const DayPlan& plan);

/// When a piece of a bore is welded and bored by the clock: the entries of the day where each begins or
/// ends.
struct PieceClock {
    std::string name;
    std::size_t torch = 0;     ///< begins: the torch is mounted
    std::size_t last_ring = 0; ///< ends with it
    std::size_t rough = 0;     ///< begins
    std::size_t finish = 0;    ///< begins
};
/// The pieces of a bore whose four times are all in the day.
std::vector<PieceClock> piece_clocks(const Schedule& day, const BorePlan& bore);

/// When each piece of a bore is preheated, welded, roughed and finished by the clock; empty without a day.
std::string bore_clock(const Plan& plan, const BorePlan& bore);

} // namespace ringfill
