#pragma once

#include <vector>

#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// How the figures of a heat balance were reached (heat.boss_kg and so on, time.*). Times come from the
/// integration of one equation, told as time.curve with its value where the first ring begins; what is added
/// up from them is told as such.
std::vector<Working> balance_working(const WornBore& bore, const Build& build, Time arc,
                                     const HeatBalance& balance);

/// Times of one kind of step, in the order of the work [s].
std::vector<double> step_times(const HeatRun& run, HeatStage stage);

/// The longest time of a stage over the runs; nothing when a run does not reach it.
std::optional<Time> longest(const HeatBalance& balance, std::optional<Time> HeatRun::*stage);

/// From the first flame to where finishing may begin, each part the longest that may be; nothing when a run
/// does not end well.
std::optional<Time> total_time(const HeatBalance& balance, Time arc);

} // namespace ringfill
