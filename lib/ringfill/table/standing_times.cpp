#include <ringfill/table/standing_times.hpp>

#include <algorithm>
#include <array>
#include <iterator>

#include <fmt/format.h>

#include <ringfill/document/described.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/table/read_table.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr Span minutes{0, 10'000, true};

constexpr std::array time_fields = {
    Field{.name = "minutes",
          .kind = Kind::sourced,
          .required = true,
          .span = minutes,
          .sample = R"([45, "practice"])"},
    Field{.name = "range_min",
          .kind = Kind::sourced_range,
          .span = minutes,
          .sample = R"([20, 90, "practice"])"},
};
constexpr Record time_record{"a standing time", "", time_fields};

constexpr std::array format = {"ringfill-standing_times/1"sv};
constexpr std::array file_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-standing_times/1")",
          .words = format},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record},
    Field{.name = "times",
          .kind = Kind::object,
          .shape = Shape::named,
          .required = true,
          .sample = "{ ... }",
          .record = &time_record},
};
constexpr Record file_record{"the table of standing times", "", file_fields};

StepTime read_time(const std::string& name, const Entry& row, const Bibliography& sources) {
    const SourcedReader reader(row, sources);
    if (std::find(std::begin(standing_steps), std::end(standing_steps), name) == std::end(standing_steps))
        row.refuse(row.value(), row.path(), "is no step of a day",
                   suggest(name, {std::begin(standing_steps), std::end(standing_steps)}));
    StepTime time{name, reader.quantity<Time>("minutes", factor::minute).value_or(Sourced<Time>{}), {}};
    if (const auto range = reader.range("range_min")) {
        const auto low = in_si<Time>(range->value.first * factor::minute);
        const auto high = in_si<Time>(range->value.second * factor::minute);
        time.range = Sourced<std::pair<Time, Time>>{{low, high}, range->source};
        if (time.time.value < low || time.time.value > high)
            row.refuse("minutes", "lies outside its own range_min", "put one of the two right");
    }
    return time;
}

void refuse_missing(const std::vector<StepTime>& times, Reading& reading, const Entry& entry) {
    if (!reading.faults.empty())
        return;
    for (const std::string_view step : standing_steps)
        if (std::none_of(times.begin(), times.end(), [&](const StepTime& one) { return one.name == step; }))
            entry.refuse(entry.value(), fmt::format("times.{}", step), "is missing",
                         "write it with its source");
}

} // namespace

std::vector<StepTime> read_standing_times(const std::vector<Document>& files, const Bibliography& sources) {
    std::vector<StepTime> times;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, file_record, "");
        if (has_signature(entry)) {
            Bibliography known = sources;
            add_sources(known, entry);
            for (const auto& [name, row] : entry.named_objects("times"))
                put_row(times, read_time(name, row, known));
        }
        if (&file == &files.back())
            refuse_missing(times, reading, entry);
        refuse_if_any(Origin::table, reading.faults);
    }
    return times;
}

const StepTime& step_time(const std::vector<StepTime>& times, std::string_view step) {
    return *std::find_if(times.begin(), times.end(), [&](const StepTime& one) { return one.name == step; });
}

} // namespace ringfill
