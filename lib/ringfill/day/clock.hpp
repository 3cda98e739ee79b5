#pragma once

#include <string>

#include <ringfill/day/calendar.hpp>

namespace ringfill {

/// A time by the clock of its day, rounded to the minute: "09:15".
std::string clock_of(const Calendar& calendar, Time at);

/// The same with its day, counted from 1: "day 2 09:15".
std::string day_and_clock(const Calendar& calendar, Time at);

/// A later time: with its day only where that is another one.
std::string later_clock(const Calendar& calendar, Time from, Time at);

} // namespace ringfill
