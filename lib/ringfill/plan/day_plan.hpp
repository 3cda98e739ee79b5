#pragma once

#include <optional>

#include <ringfill/day/schedule.hpp>

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
    Time change_over;
    Schedule day;    ///< bores of a line in turns, where that is sooner
    Time one_by_one; ///< how long it takes bore after bore
    Time arc;        ///< the arc burns
    Time worked;     ///< nights left out
    std::optional<ReturnVisit> back;

    double arc_share() const { return (arc / worked).value(); }
};

} // namespace ringfill
