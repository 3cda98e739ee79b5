#include <ringfill/job/read_workday.hpp>

#include <algorithm>

#include <ringfill/units/factor.hpp>
#include <ringfill/units/measured_field.hpp>

namespace ringfill {
namespace {

/// One or two digits as a number, nothing for anything else.
std::optional<int> small_number(std::string_view digits) {
    if (digits.empty() || digits.size() > 2)
        return std::nullopt;
    int number = 0;
    for (const char digit : digits) {
        if (digit < '0' || digit > '9')
            return std::nullopt;
        number = 10 * number + (digit - '0');
    }
    return number;
}

} // namespace

std::optional<Time> clock_time(std::string_view text) {
    const std::size_t colon = std::min(text.find(':'), text.size());
    const auto hour = small_number(text.substr(0, colon));
    const std::string_view rest = text.substr(std::min(colon + 1, text.size()));
    const auto minute = rest.size() == 2 ? small_number(rest) : std::nullopt;
    if (!hour || !minute || *hour > 23 || *minute > 59)
        return std::nullopt;
    return in_si<Time>(*hour * factor::hour + *minute * factor::minute);
}

Workday read_workday(const Entry& job) {
    Workday day;
    if (const auto text = job.text("start")) {
        const auto start = clock_time(*text);
        if (!start)
            job.refuse("start", "is no time of day", R"(write it like "07:00")");
        day.start = start.value_or(Time());
    }
    day.length = measured<Time>(job, "working_day").value_or(Time());
    day.change_over = measured<Time>(job, "change_over").value_or(Time());
    return day;
}

} // namespace ringfill
