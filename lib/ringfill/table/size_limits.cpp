#include <ringfill/table/size_limits.hpp>

#include <algorithm>
#include <array>

#include <ringfill/document/described.hpp>
#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr Span millimetre_span{0, 10'000};
constexpr Span width{0, 100'000, true};
constexpr Span deviation{-100'000, 100'000};

constexpr std::array step_fields = {
    Field{.name = "over_mm",
          .kind = Kind::sourced,
          .required = true,
          .span = millimetre_span,
          .sample = R"([80, "ISO286-1"])"},
    Field{.name = "to_mm",
          .kind = Kind::sourced,
          .required = true,
          .span = millimetre_span,
          .sample = R"([120, "ISO286-1"])"},
    Field{.name = "grades_um",
          .kind = Kind::sourced,
          .shape = Shape::named,
          .required = true,
          .span = width,
          .sample = R"({ "9": [87, "ISO286-1"] })"},
    Field{.name = "deviations_um",
          .kind = Kind::sourced,
          .shape = Shape::named,
          .span = deviation,
          .sample = R"({ "F": [36, "ISO286-1"] })"},
};
constexpr Record step_record{"a step of sizes", "", step_fields};

constexpr std::array format = {"ringfill-size_limits/1"sv};
constexpr std::array file_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-size_limits/1")",
          .words = format},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record},
    Field{.name = "sizes",
          .kind = Kind::object,
          .shape = Shape::named,
          .required = true,
          .sample = "{ ... }",
          .record = &step_record},
};
constexpr Record file_record{"the table of size limits", "", file_fields};

SizeStep read_step(const std::string& name, const Entry& row, const Bibliography& sources) {
    const SourcedReader reader(row, sources);
    SizeStep step;
    step.name = name;
    const auto over = reader.quantity<Length>("over_mm", 1e-3);
    const auto to = reader.quantity<Length>("to_mm", 1e-3);
    step.over = over.value_or(Sourced<Length>());
    step.to = to.value_or(Sourced<Length>());
    if (over && to && over->value >= to->value)
        row.refuse("to_mm", "is not over over_mm", "swap the two");
    step.grades_um = reader.named("grades_um");
    step.deviations_um = reader.named("deviations_um");
    return step;
}

} // namespace

std::vector<SizeStep> read_size_steps(const std::vector<Document>& files, const Bibliography& sources) {
    std::vector<SizeStep> steps;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, file_record, "");
        if (has_signature(entry)) {
            Bibliography known = sources;
            add_sources(known, entry);
            for (const auto& [name, row] : entry.named_objects("sizes"))
                put_row(steps, read_step(name, row, known));
        }
        refuse_if_any(Origin::table, reading.faults);
    }
    std::stable_sort(steps.begin(), steps.end(),
                     [](const SizeStep& a, const SizeStep& b) { return a.over.value < b.over.value; });
    return steps;
}

} // namespace ringfill
