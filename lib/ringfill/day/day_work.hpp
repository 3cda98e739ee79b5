#pragma once

#include <vector>

#include <ringfill/boring/bore_plan.hpp>
#include <ringfill/day/schedule.hpp>
#include <ringfill/job/job.hpp>
#include <ringfill/table/standing_times.hpp>

namespace ringfill {

/// Whether a flame warms a bore up before it is welded.
bool preheats_by_flame(const BorePlan& planned);

/// From a flame taken away to the first arc: the start delay, or longer where the wall needs that until the
/// heated face can be read. Needs the wall and the heat balance.
Time soaking_time(const BorePlan& planned);

/// Whether that holds: a flame is taken away, and the job gives no start delay of its own.
bool soaks_by_wall(const Job& job, const BorePlan& planned);

/// All the work on a job: its lines with the pieces of every bore, bores without a line each on its own. All
/// bores of a line are measured and skimmed on one set-up before one is welded: the tool is on, and the weld
/// pulls the axis. Then each has its crack check; from the first flame to the last ring and the hold;
/// roughing once it has cooled, or has come back from its heat treatment; finishing and measuring once it is
/// cold. Needs the heat balance of every bore. The longer of two runs counts for the warm-up, the hold and
/// the cooling, the one with the most stops for the rings.
JobWork work_on(const Job& job, const std::vector<BorePlan>& bores, const std::vector<StepTime>& times);

} // namespace ringfill
