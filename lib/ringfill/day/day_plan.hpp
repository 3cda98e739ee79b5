#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/boring/bore_plan.hpp>
#include <ringfill/day/longer_day.hpp>
#include <ringfill/job/job.hpp>
#include <ringfill/table/standing_times.hpp>

namespace ringfill {

/// A second visit, once cracks that come late have had their time.
struct ReturnVisit {
    Time wait;   ///< from the end of the work
    Time at;     ///< when it begins, from the start of the first day
    Time length; ///< of the crack test
};

/// The whole job by the clock.
struct DayPlan {
    Calendar calendar;
    Schedule day = {};    ///< bores of a line in turns, where that is sooner
    Time one_by_one = {}; ///< how long it takes bore after bore
    Time arc = {};        ///< the arc burns
    Time worked = {};     ///< with hands at work: no waits, no nights
    Time waited = {};     ///< on site, by day
    Time idle = {};       ///< by day, with nobody there until a morning
    Time breaks = {};     ///< of the crew
    std::optional<ReturnVisit> back = {};
    std::optional<Overtime> overtime = {}; ///< that would end the work a day earlier; not in this plan

    double arc_share() const { return (arc / worked).value(); }
};

/// The day of a job, or why it is not laid out.
struct PlannedDay {
    std::optional<DayPlan> day;
    std::string no_day; ///< why there is none, the end of a sentence
};

/// Lays the work on all bores out by the clock. There is no day when the heat of some bore is not followed to
/// its end, or when there are too many pieces.
PlannedDay plan_day(const Job& job, const std::vector<BorePlan>& bores, const std::vector<StepTime>& times);

/// Why there is no day, or what in it runs over, in sentences.
std::vector<std::string> day_notes(const PlannedDay& planned);

/// How the figures of the day were reached (day.*, totals.elapsed_s).
std::vector<Working> day_working(const DayPlan& day);

} // namespace ringfill
