#pragma once

#include <string>
#include <vector>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// What the hours of a day go into.
enum class Phase { set_up, heating, welding, waiting, boring, clean_up };

/// One thing that is done, or waited for.
struct WorkStep {
    std::string name; ///< "skim", "layer 3", "cool to 150 °C"
    Time length;
    bool waits = false;          ///< nobody's hands are needed
    bool uses_bar = false;       ///< with its tool or the torch on it
    Time arc_time = {};          ///< the arc burns for so much of it
    bool welding = false;        ///< between the first and the last ring: people read it as one
    bool fire = false;           ///< flame, arc, sparks, or a pause between them
    Phase phase = Phase::set_up; ///< of a wait it is waiting, whatever stands here
};

/// Steps that follow one another without a break, and the least time before the bore's next block may begin.
struct WorkBlock {
    std::vector<WorkStep> steps;
    bool hot = false; ///< from the first flame to the last ring: nobody leaves it but in its waits
    std::string rest_name = {};
    Time rest = {}; ///< the bore cools by itself

    Time length() const;
};

/// All the work on one bore, in its order.
struct BoreWork {
    std::string bore;
    std::vector<WorkBlock> blocks;
};

/// Bores that share one set-up of the bar.
struct LineWork {
    std::string line; ///< empty: a bore on its own
    WorkBlock set_up;
    std::vector<BoreWork> bores;
    WorkBlock strip; ///< bar and bearings off
};

} // namespace ringfill
