#pragma once

#include <string>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// The hours that are worked. Time counts from the start of the first day, nights included.
struct Calendar {
    Time starts;      ///< of each day, from midnight
    Time working_day; ///< over 0, at most 24 h
    Time late = {};   ///< work may end so much later rather than be left for the morning
};

/// Which day a time lies in, from 0.
int day_of(Time at);

/// When work of some length can begin at the earliest: at once where it ends within the working day or little
/// later, else in the next morning. Work that is longer than a day begins in a morning and runs over.
Time begin_at(const Calendar& calendar, Time earliest, Time length);

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
