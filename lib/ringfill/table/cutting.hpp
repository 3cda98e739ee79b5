#pragma once

#include <utility>
#include <vector>

#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// How long the hands take for something beside the chips, and from how long to how long that is.
struct StandingTime {
    Sourced<Time> usual;
    SourcedRange<Time> range;
};

/// How a portable boring bar is run where the job does not say, and what such bars do.
struct Cutting {
    Sourced<Speed> cutting_speed;
    Sourced<Length> feed;            ///< per revolution
    Sourced<Length> facing_feed;     ///< of the facing head, per revolution
    Sourced<Length> rough_cut;       ///< deepest, per side
    Sourced<Length> semi_finish_cut; ///< per side
    Sourced<Length> finish_cut;      ///< per side
    Sourced<Length> nose_radius;     ///< of the tool bit
    Sourced<Time> edge_life;         ///< cutting time of one edge
    Sourced<double> expansion;       ///< of a metal whose family gives none [1/K]
    Sourced<Temperature> rough_below;
    Sourced<Temperature> finish_below; ///< also for measuring

    SourcedRange<Turning> small_bar; ///< electric
    SourcedRange<Turning> large_bar; ///< hydraulic
    SourcedRange<Speed> axial_feed;
    SourcedRange<Length> bores; ///< diameters that portable bars serve
    Sourced<Power> bar_drive;   ///< what a usual drive draws
    Sourced<Length> bit_step;   ///< the tool bit is set in such steps, on the radius

    StandingTime tool_set;    ///< the bit set and the bar run back, before each cut
    StandingTime trim;        ///< the weld past one face taken off flush
    StandingTime facing_head; ///< put on for one face
    StandingTime groove;      ///< one retaining groove cut again
    StandingTime hole;        ///< one plugged hole reopened
    StandingTime chamfer;     ///< one lead-in chamfer
    StandingTime bar_move;    ///< the bar set and aligned again for the next stroke
};

/// Reads cutting.json, file after file; a later file corrects figure by figure. Throws Faulty
/// (Origin::table), also when a figure is in none of the files.
Cutting read_cutting(const std::vector<Document>& files, const Bibliography& sources);

} // namespace ringfill
