#include <ringfill/table/standing_times.hpp>

#include <iterator>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

constexpr Span step_minutes{0, 10'000, true};

void check_time(StepTime& step, const Entry& row) {
    if (!ranges::contains(standing_steps, step.name))
        row.refuse("is no step of a day",
                   suggest(step.name, {std::begin(standing_steps), std::end(standing_steps)}));
    if (step.range && is_outside(step.time, *step.range))
        row.refuse("minutes", "lies outside its own range_min", "put one of the two right");
}

constexpr auto step_record = table_record<StepTime, check_time>(
    "a standing time", field<&StepTime::time>("minutes", step_minutes, R"([45, "practice"])").required(),
    field<&StepTime::range>("range_min", step_minutes, R"([20, 90, "practice"])"));

void check_steps(const Rows<StepTime>& table, const Entry& last) {
    for (const std::string_view step : standing_steps)
        if (!ranges::contains(table.rows, step, &StepTime::name))
            last.refuse_missing(fmt::format("times.{}", step), "write it with its source");
}

} // namespace

std::vector<StepTime> read_standing_times(const std::vector<Document>& files, const Bibliography& sources) {
    return read_rows<StepTime, R"("ringfill-standing_times/1")", check_steps>(
        files, sources, "the table of standing times", "times", step_record);
}

const StepTime& step_time(const std::vector<StepTime>& times, std::string_view step) {
    return *ranges::find(times, step, &StepTime::name);
}

} // namespace ringfill
