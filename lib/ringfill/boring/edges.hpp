#pragma once

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// Cutting edges that one bore uses up.
struct Edges {
    int rough = 0;  ///< skim, rough and semi-finish cuts, facing
    int finish = 0; ///< the finish cut has a fresh one, which runs the spring pass too
    Time rough_time;
    Time finish_time;
    Time life; ///< cutting time of one edge
};

/// More edges of one kind a bore than this are refused: the life of an edge cannot be meant.
inline constexpr int most_edges = 10'000;

/// ⌈cutting time/life − 1e-9⌉; more than `most_edges` come back as `most_edges` + 1.
int edges_for(Time cutting, Time life);

/// The edges of one bore, rough and finish apart; at least one for the finish cut.
Edges edges(Time rough_time, Time finish_time, Time life);

} // namespace ringfill
