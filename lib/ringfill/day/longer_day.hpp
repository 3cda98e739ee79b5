#pragma once

#include <optional>

#include <ringfill/day/schedule.hpp>

namespace ringfill {

/// One day that is worked longer, and what comes of it.
struct Overtime {
    LongerDay day;
    Time ends; ///< of all the work
};

/// The least that one day must be worked longer for all to end on an earlier day: from an hour to two, in
/// quarters of an hour; of days that need as much the first. Nothing: no day is worth it, or there are more
/// than 20.
std::optional<Overtime> overtime(const JobWork& work, const Calendar& calendar, Time change_over, Time ends);

} // namespace ringfill
