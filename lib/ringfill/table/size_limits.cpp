#include <ringfill/table/size_limits.hpp>

#include <algorithm>

#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

constexpr Span nominal_size{0, 10'000};

void check_step(SizeStep& step, const Entry& row) {
    if (row.is_read("over_mm") && row.is_read("to_mm") && step.over.value >= step.to.value)
        row.refuse("to_mm", "is not over over_mm", "swap the two");
}

constexpr Field size_fields[] = {
    field<&SizeStep::over>("over_mm", nominal_size, R"([80, "ISO286-1"])").required(),
    field<&SizeStep::to>("to_mm", nominal_size, R"([120, "ISO286-1"])").required(),
    field<&SizeStep::grades_um>("grades_um", Span{0, 100'000, true}, R"({ "9": [87, "ISO286-1"] })")
        .required(),
    field<&SizeStep::deviations_um>("deviations_um", Span{-100'000, 100'000}, R"({ "F": [36, "ISO286-1"] })"),
};
constexpr Record size_record = record_of<SizeStep, check_step>("a step of sizes", "", size_fields);

constexpr auto sizes_fields = table_fields<R"("ringfill-size_limits/1")">(
    field<&Rows<SizeStep>::rows>("sizes", size_record, "{ ... }").required());
constexpr Record sizes_record = record_of<Rows<SizeStep>>("the table of size limits", "", sizes_fields);

} // namespace

std::vector<SizeStep> read_size_steps(const std::vector<Document>& files, const Bibliography& sources) {
    std::vector<SizeStep> steps = read_table<Rows<SizeStep>>(files, sources, sizes_record).rows;
    std::stable_sort(steps.begin(), steps.end(),
                     [](const SizeStep& a, const SizeStep& b) { return a.over.value < b.over.value; });
    return steps;
}

} // namespace ringfill
