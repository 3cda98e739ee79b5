#include <ringfill/day/calendar.hpp>

#include <cmath>

namespace ringfill {
namespace {

constexpr double day_s = 86'400;
/// A step that ends with the day ends within it, whatever its last digit [s].
constexpr double rounding = 1e-6;

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

} // namespace ringfill
