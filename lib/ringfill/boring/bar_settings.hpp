#pragma once

#include <optional>
#include <vector>

#include <ringfill/document/assumed.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/table/cutting.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// How the bar is run: what the job says, and for the rest the table; each with its source.
struct BarSettings {
    Sourced<Speed> cutting_speed;
    Sourced<Length> feed;
    Sourced<Length> rough_cut;
    Sourced<Time> edge_life;
    std::optional<Length> stroke;
    std::vector<Turning> bar_speeds;
};

BarSettings bar_settings(const BoringBar& bar, const Cutting& cutting);

/// Which figures of the table only some jobs need.
struct NeededFigures {
    bool facing_feed = false; ///< there are faces
    bool expansion = false;   ///< a base metal gives none
};

/// The values of the table that a job is planned with because it leaves them out, or cannot give them. The
/// standing times stand in the plan one by one.
std::vector<Assumed> assumed_cutting(const BoringBar& bar, const Cutting& cutting, NeededFigures needed,
                                     UnitSystem units);

} // namespace ringfill
