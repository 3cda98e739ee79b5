#include <ringfill/table/size_limits.hpp>

#include <range/v3/algorithm/stable_sort.hpp>

#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

constexpr Span nominal_size{0, 10'000};

void check_step(SizeStep& step, const Entry& row) {
    if (row.is_read("over_mm") && row.is_read("to_mm") && step.over.value >= step.to.value)
        row.refuse("to_mm", "is not over over_mm", "swap the two");
}

constexpr auto size_record = table_record<SizeStep, check_step>(
    "a step of sizes", field<&SizeStep::over>("over_mm", nominal_size, R"([80, "ISO286-1"])").required(),
    field<&SizeStep::to>("to_mm", nominal_size, R"([120, "ISO286-1"])").required(),
    field<&SizeStep::grades_um>("grades_um", Span{0, 100'000, true}, R"({ "9": [87, "ISO286-1"] })")
        .required(),
    field<&SizeStep::deviations_um>("deviations_um", Span{-100'000, 100'000},
                                    R"({ "F": [36, "ISO286-1"] })"));

} // namespace

std::vector<SizeStep> read_size_steps(const std::vector<Document>& files, const Bibliography& sources) {
    std::vector<SizeStep> steps = read_rows<SizeStep, R"("ringfill-size_limits/1")">(
        files, sources, "the table of size limits", "sizes", size_record);
    ranges::stable_sort(steps, {}, [](const SizeStep& step) { return step.over.value; });
    return steps;
}

} // namespace ringfill
