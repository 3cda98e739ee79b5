#pragma once

#include <optional>
#include <string>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// One day that is worked longer than the others.
struct LongerDay {
    int day = 0; ///< from 0
    Time by;
};

/// The hours that are worked. Time counts from the start of the first day, nights included.
struct Calendar {
    Time starts;                          ///< of each day, from midnight
    Time working_day;                     ///< over 0, at most 24 h
    Time late = {};                       ///< work may end so much later rather than be left for the morning
    Time breaks = {};                     ///< a day, less than it
    std::optional<LongerDay> longer = {}; ///< that day ends no later than it says
};

/// Which day a time lies in, from 0.
int day_of(Time at);

/// Whether a time is the start of a day.
bool is_morning(Time at);

/// Whether work that begins at some time of a working day and ends at another ends with that day, or little
/// later.
bool ends_with_the_day(const Calendar& calendar, Time from, Time to);

/// When work of some length can begin at the earliest: at once where it ends within the working day or little
/// later, else in the next morning. Work that is longer than a day begins in a morning and runs over.
Time begin_at(const Calendar& calendar, Time earliest, Time length);

/// The middle of the working day that a time lies in.
Time middle_of_day(const Calendar& calendar, Time at);

/// End of the working day that a time lies in, or of the night before it when it lies in one.
Time working_end(const Calendar& calendar, Time at);

/// Start of the next working day.
Time next_morning(Time at);

/// A time by the clock of its day, rounded to the minute: "09:15".
std::string clock_of(const Calendar& calendar, Time at);

/// The same with its day, counted from 1: "day 2 09:15".
std::string day_and_clock(const Calendar& calendar, Time at);

/// A later time: with its day only where that is another one.
std::string later_clock(const Calendar& calendar, Time from, Time at);

} // namespace ringfill
