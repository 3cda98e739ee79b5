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

Time morning_of(Time at) {
    return in_si<Time>(day_of(at) * day_s);
}

bool is_longer(const Calendar& calendar, Time at) {
    return calendar.longer && calendar.longer->day == day_of(at);
}

} // namespace

int day_of(Time at) {
    return static_cast<int>(std::floor((at.value() + rounding) / day_s));
}

Time working_end(const Calendar& calendar, Time at) {
    return morning_of(at) + calendar.working_day + (is_longer(calendar, at) ? calendar.longer->by : Time());
}

Time next_morning(Time at) {
    return in_si<Time>((day_of(at) + 1) * day_s);
}

bool is_morning(Time at) {
    return (at - morning_of(at)).value() <= rounding;
}

bool ends_with_the_day(const Calendar& calendar, Time from, Time to) {
    const Time late = is_longer(calendar, from) ? Time() : calendar.late;
    return to.value() <= (working_end(calendar, from) + late).value() + rounding;
}

Time begin_at(const Calendar& calendar, Time earliest, Time length) {
    return is_morning(earliest) || ends_with_the_day(calendar, earliest, earliest + length)
               ? earliest
               : next_morning(earliest);
}

Time middle_of_day(const Calendar& calendar, Time at) {
    return morning_of(at) + calendar.working_day / 2.0;
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
