#pragma once

#include <string>
#include <vector>

#include <ringfill/boring/bore_plan.hpp>
#include <ringfill/day/schedule.hpp>
#include <ringfill/job/job.hpp>
#include <ringfill/table/standing_times.hpp>

namespace ringfill {

/// What is done on a job. The cools and waits between the blocks of a bore are no steps: they are its rests.
enum class Step {
    unload,
    set_up_bar,
    survey,
    mount_tool,
    skim,
    check_cracks,
    plug_holes,
    mount_torch,
    preheat,
    wait_too_hot,
    clean_layer,
    weld,
    reheat,
    hold,
    trim,
    rough,
    finish,
    face,
    cut_grooves,
    reopen_holes,
    chamfer,
    measure,
    take_off_bar,
    pack
};

/// A step with its words, its phase, and what it takes: bar, fire, hands.
/// @param of what it is done on, put behind its words: "skim" and "arm root".
WorkStep work_step(Step step, Time length, const std::string& of = {});

/// The work on one piece of a bore, in its order: survey, skim and crack check; from the first flame to the
/// last ring and the hold; roughing once it has cooled; finishing and measuring once it is cold. Needs its
/// heat balance. The longer of two runs counts for the warm-up, the hold and the cooling, the one with the
/// most stops for the rings.
BoreWork bore_work(const std::string& name, const WornBore& bore, const BorePlan& planned,
                   const std::vector<StepTime>& times);

/// The lines of a job with the pieces of every bore, bores without a line each on its own. All bores of a
/// line are measured and skimmed before one is welded: the tool is on, and the weld pulls the axis.
std::vector<LineWork> line_works(const Job& job, const std::vector<BorePlan>& bores,
                                 const std::vector<StepTime>& times);

/// How long a step of the table of standing times takes.
inline Time time_of(const std::vector<StepTime>& times, std::string_view step) {
    return step_time(times, step).time.value;
}

/// More pieces than this are not laid out by the clock.
inline constexpr int most_pieces_of_a_day = 100;

/// Why there is no day, the end of a sentence; empty when there is one.
std::string no_day_because(const std::vector<BorePlan>& bores);

} // namespace ringfill
