#pragma once

#include <string>
#include <vector>

#include <ringfill/day/calendar.hpp>

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

/// A stretch of the day, time from the start of the first day. One follows the other without a gap: every
/// minute belongs to one of them.
struct DayEntry {
    Time from;
    Time to;
    std::string bore; ///< empty: the line, or the whole job
    std::string step;
    bool waits = false;
    bool night = false; ///< after the working day
    Time arc_time = {};
    bool welding = false; ///< between the first and the last ring of the bore
    bool fire = false;    ///< flame, arc, sparks, or a pause between them
    Phase phase = Phase::waiting;
};

/// The work in its order of time.
struct Schedule {
    std::vector<DayEntry> entries;
    Time ends;              ///< from the start of the first day
    bool runs_over = false; ///< some block is longer than a working day
};

/// How bores of a line take turns.
enum class Turns { one_by_one, alternating };

/// Lays the work of the lines out, one line after the other. Bores of a line alternate: while one cools
/// between its blocks another is worked on, whichever can begin first; while one waits inside its hot block,
/// hand work on another that fits in the wait is done. Going to another bore and back costs `change_over`,
/// half of it each way, and a wait that is not longer is not filled.
Schedule lay_out(const WorkBlock& arrive, const std::vector<LineWork>& lines, const WorkBlock& leave,
                 const Calendar& calendar, Time change_over, Turns turns);

} // namespace ringfill
