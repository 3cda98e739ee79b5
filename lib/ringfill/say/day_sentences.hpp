#pragma once

#include <string>
#include <vector>

#include <ringfill/plan/plan.hpp>
#include <ringfill/say/sentence.hpp>

namespace ringfill {

/// When all is done, what taking turns saves, the share of the arc, and the visit for the crack test.
Sentences day_sentences(const DayPlan& plan);

/// When a piece of a bore is welded and bored by the clock: the entries of the day where each begins or
/// ends.
struct PieceClock {
    std::string name;
    std::size_t torch = 0;     ///< begins: torch or burner, or the flame or arc where there is neither
    std::size_t last_ring = 0; ///< ends with it
    std::size_t rough = 0;     ///< begins
    std::size_t finish = 0;    ///< begins
};
/// The pieces of a bore whose four times are all in the day.
std::vector<PieceClock> piece_clocks(const Schedule& day, const BorePlan& bore);

} // namespace ringfill
