#include <ringfill/day/calendar.hpp>

#include <cmath>

#include <fmt/format.h>

#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr double day_s = 86'400;
/// A step that ends with the day ends within it, whatever its last digit [s].
constexpr double rounding = 1e-6;

constexpr long minutes_in_day = 24L * 60;

/// Minutes since the midnight before the first day.
long minute_of(const Calendar& calendar, Time at) {
    return std::lround((calendar.starts + at).value() / factor::minute);
}

} // namespace

int day_of(Time at) {
    return static_cast<int>(std::floor((at.value() + rounding) / day_s));
}

Time working_end(const Calendar& calendar, Time at) {
    return in_si<Time>(day_of(at) * day_s) + calendar.working_day;
}

Time next_morning(Time at) {
    return in_si<Time>((day_of(at) + 1) * day_s);
}

Time begin_at(const Calendar& calendar, Time earliest, Time length) {
    const double into_day = earliest.value() - day_of(earliest) * day_s;
    if (into_day <= rounding)
        return earliest;
    const Time ends = working_end(calendar, earliest);
    const bool fits = earliest.value() <= ends.value() + calendar.late.value() &&
                      (earliest + length).value() <= (ends + calendar.late).value() + rounding;
    return fits ? earliest : next_morning(earliest);
}

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
