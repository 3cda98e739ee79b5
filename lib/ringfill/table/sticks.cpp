#include <ringfill/table/sticks.hpp>

#include <algorithm>
#include <array>

#include <ringfill/document/described.hpp>
#include <ringfill/table/read_table.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr Span celsius_span{0, 700};
constexpr Span fahrenheit_span{32, 1'292};
constexpr std::array unit_words = {"mm"sv, "inch"sv};

constexpr std::array stick_fields = {
    Field{.name = "units", .kind = Kind::word, .required = true, .sample = R"("mm")", .words = unit_words},
    Field{
        .name = "rating_degC", .kind = Kind::sourced, .span = celsius_span, .sample = R"([110, "practice"])"},
    Field{.name = "rating_degF",
          .kind = Kind::sourced,
          .span = fahrenheit_span,
          .sample = R"([225, "practice"])"},
    Field{.name = "stocked", .kind = Kind::flag, .sample = "true"},
};
constexpr Record stick_record{"a temperature stick", "", stick_fields};

constexpr std::array format = {"ringfill-sticks/1"sv};
constexpr std::array file_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-sticks/1")",
          .words = format},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record},
    Field{.name = "sticks",
          .kind = Kind::object,
          .shape = Shape::named,
          .required = true,
          .sample = "{ ... }",
          .record = &stick_record},
};
constexpr Record file_record{"the table of temperature sticks", "", file_fields};

/// One rating in one scale: of two nobody can tell which is on the stick.
void check_rating(const Entry& row) {
    const bool in_celsius = row.has("rating_degC");
    const bool in_fahrenheit = row.has("rating_degF");
    if (!in_celsius && !in_fahrenheit)
        row.refuse(row.value(), row.path(), "has no rating", R"(write "rating_degC" or "rating_degF")");
    if (in_celsius && in_fahrenheit)
        row.refuse(row.value(), row.path(), "has two ratings",
                   R"(keep the one that is printed on it, "rating_degC" or "rating_degF")");
}

Stick read_stick(const std::string& name, const Entry& row, const Bibliography& sources) {
    const SourcedReader reader(row, sources);
    check_rating(row);
    Stick stick;
    stick.name = name;
    stick.units = row.word("units") == "inch" ? UnitSystem::inch : UnitSystem::metric;
    stick.stocked = row.flag("stocked").value_or(true);
    if (const auto rating = reader.number("rating_degC")) {
        stick.rating = celsius(rating->value);
        stick.source = rating->source;
    }
    if (const auto rating = reader.number("rating_degF")) {
        stick.rating = fahrenheit(rating->value);
        stick.source = rating->source;
    }
    return stick;
}

} // namespace

std::vector<Stick> read_sticks(const std::vector<Document>& files, const Bibliography& sources) {
    std::vector<Stick> sticks;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, file_record, "");
        if (has_signature(entry)) {
            Bibliography known = sources;
            add_sources(known, entry);
            for (const auto& [name, row] : entry.named_objects("sticks"))
                put_row(sticks, read_stick(name, row, known));
        }
        refuse_if_any(Origin::table, reading.faults);
    }
    std::stable_sort(sticks.begin(), sticks.end(),
                     [](const Stick& a, const Stick& b) { return a.rating < b.rating; });
    return sticks;
}

} // namespace ringfill
