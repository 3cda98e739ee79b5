#include <ringfill/day/clock.hpp>

#include <cmath>

#include <fmt/format.h>

#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr long minutes_in_day = 24L * 60;

/// Minutes since the midnight before the first day.
long minute_of(const Calendar& calendar, Time at) {
    return std::lround((calendar.starts + at).value() / factor::minute);
}

} // namespace

std::string clock_of(const Calendar& calendar, Time at) {
    const long minute = minute_of(calendar, at) % minutes_in_day;
    return fmt::format("{:02}:{:02}", minute / 60, minute % 60);
}

std::string day_and_clock(const Calendar& calendar, Time at) {
    return fmt::format("day {} {}", minute_of(calendar, at) / minutes_in_day + 1, clock_of(calendar, at));
}

std::string later_clock(const Calendar& calendar, Time from, Time at) {
    return minute_of(calendar, from) / minutes_in_day == minute_of(calendar, at) / minutes_in_day
               ? clock_of(calendar, at)
               : day_and_clock(calendar, at);
}

} // namespace ringfill
