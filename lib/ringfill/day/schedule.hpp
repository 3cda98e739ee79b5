#pragma once

#include <string>
#include <vector>

#include <ringfill/day/calendar.hpp>
#include <ringfill/day/step.hpp>

namespace ringfill {

/// One thing that is done, or waited for. One that takes no time is left out of the day.
struct WorkStep {
    Step step;
    Time length;
    std::string on = {}; ///< what it is done on, where the bore does not say it: "ring 3"
    Time arc_time = {};  ///< the arc burns for that much of it
};

/// Steps that follow one another, and the least time before the bore's next block may begin. From the first
/// flame to the last nobody leaves them; elsewhere they go on in the morning where the evening comes first.
struct WorkBlock {
    std::vector<WorkStep> steps = {};
    bool hot = false; ///< from the first flame to the last ring: nobody leaves it but in its waits
    Step resting = steps::wait_for_morning; ///< what is waited for after it
    Time rest = {};                         ///< the bore cools by itself
};

/// All the work on one bore, in its order.
struct BoreWork {
    std::string bore;
    std::vector<WorkBlock> blocks;
    bool preheated = false;
};

/// Bores that share one set-up of the bar.
struct LineWork {
    std::string line; ///< empty: a bore on its own
    WorkBlock set_up;
    std::vector<BoreWork> bores;
    WorkStep strip; ///< bar and bearings off
};

/// All the work on a job.
struct JobWork {
    WorkStep arrive;
    std::vector<LineWork> lines;
    WorkStep leave;
};

/// A stretch of the day, time from the start of the first day. One follows the other without a gap: every
/// minute belongs to one of them.
struct DayEntry {
    Time from;
    Time to;
    std::string bore; ///< empty: the line, or the whole job
    Step step;
    std::string on = {}; ///< what it is done on, where the bore does not say it
    Time arc_time = {};
    bool night = false;       ///< after the working day
    Phase phase = step.phase; ///< idle also while a bore cools until a morning: nobody stays for that
};

/// What is done, or waited for, in words: "skim arm root".
std::string words_of(const DayEntry& entry);

/// Whether some bore takes longer than a working day, and if it does whether its preheat must be kept over
/// night.
enum class LongBore { none, without_preheat, with_preheat };

/// A break that lies inside the heat of a bore.
struct BreakInFire {
    int day = 0; ///< from 0
    std::string bore;
};

/// The work in its order of time.
struct Schedule {
    std::vector<DayEntry> entries;
    Time ends; ///< from the start of the first day
    LongBore long_bore = LongBore::none;
    std::vector<BreakInFire> breaks_in_fire = {};
};

/// Time of each stretch of the day that a phase goes into, nights left out.
std::vector<Time> stretches_of(const Schedule& schedule, bool (*wanted)(Phase));

/// How bores of a line take turns.
enum class Turns { one_by_one, alternating };

/// Lays the work of the lines out, one line after the other. Bores of a line alternate where that is sooner:
/// while one cools between its blocks another is worked on, whichever can begin first; while one waits inside
/// its hot block, hand work on another that fits in the wait is done. Going to another bore and back costs
/// `change_over`, half of it each way, and a wait that is not longer is not filled.
Schedule lay_out(const JobWork& work, const Calendar& calendar, Time change_over, Turns turns);

} // namespace ringfill
