#include <ringfill/day/longer_day.hpp>

namespace ringfill {
namespace {

// What a crew is asked to stay longer, in minutes, and for how many days it is tried [own choice].
constexpr int longer_by[] = {60, 75, 90, 105, 120};
constexpr int most_days = 20;

std::optional<Overtime> sooner_with(LongerDay longer, const JobWork& work, Calendar calendar,
                                    Time change_over, int last_day) {
    calendar.longer = longer;
    const Time ends = lay_out(work, calendar, change_over, Turns::alternating).ends;
    return day_of(ends) < last_day ? std::optional(Overtime{longer, ends}) : std::nullopt;
}

} // namespace

std::optional<Overtime> overtime(const JobWork& work, const Calendar& calendar, Time change_over, Time ends) {
    const int last_day = day_of(ends);
    if (last_day >= most_days)
        return std::nullopt;
    for (const int by : longer_by)
        for (int day = 0; day < last_day; ++day)
            if (const auto found =
                    sooner_with({day, in_si<Time>(60.0 * by)}, work, calendar, change_over, last_day))
                return found;
    return std::nullopt;
}

} // namespace ringfill
