#include <ringfill/table/wear_parts.hpp>

#include <array>

#include <ringfill/table/read_table.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr Span hours{0, 10'000, true};
constexpr Span kilograms{0, 100'000, true};
constexpr Span metres{0, 100, true};

constexpr std::array part_fields = {
    Field{.name = "arc_life_h", .kind = Kind::sourced, .span = hours, .sample = R"([2, "practice"])"},
    Field{.name = "wire_life_kg", .kind = Kind::sourced, .span = kilograms, .sample = R"([100, "practice"])"},
    Field{.name = "length_m", .kind = Kind::sourced, .span = metres, .sample = R"([4, "practice"])"},
};
constexpr Record part_record{"a wear part", "", part_fields};

constexpr std::array parts_fields = {
    Field{.name = "contact_tip", .kind = Kind::object, .record = &part_record},
    Field{.name = "nozzle", .kind = Kind::object, .record = &part_record},
    Field{.name = "liner", .kind = Kind::object, .record = &part_record},
};
constexpr Record parts_record{"parts", "", parts_fields};

constexpr std::array format = {"ringfill-wear_parts/1"sv};
constexpr std::array file_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-wear_parts/1")",
          .words = format},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record},
    Field{.name = "parts",
          .kind = Kind::object,
          .required = true,
          .sample = "{ ... }",
          .record = &parts_record},
};
constexpr Record file_record{"the table of wear parts", "", file_fields};

template <class Quantity>
void read_into(Sourced<Quantity>& figure, const Entry& parts, std::string_view part, std::string_view field,
               double factor, const Bibliography& sources) {
    if (const auto entry = parts.object(part))
        if (auto found = SourcedReader(*entry, sources).quantity<Quantity>(field, factor))
            figure = std::move(*found);
}

void read_parts(WearParts& wear, const Entry& parts, const Bibliography& sources) {
    read_into(wear.tip_life, parts, "contact_tip", "arc_life_h", factor::hour, sources);
    read_into(wear.nozzle_life, parts, "nozzle", "arc_life_h", factor::hour, sources);
    read_into(wear.liner_life, parts, "liner", "wire_life_kg", 1, sources);
    read_into(wear.liner_length, parts, "liner", "length_m", 1, sources);
}

void refuse_missing(const WearParts& wear, Reading& reading, const Entry& entry) {
    if (!reading.faults.empty())
        return;
    const std::array figures = {std::pair{wear.tip_life.source, "parts.contact_tip.arc_life_h"},
                                std::pair{wear.nozzle_life.source, "parts.nozzle.arc_life_h"},
                                std::pair{wear.liner_life.source, "parts.liner.wire_life_kg"},
                                std::pair{wear.liner_length.source, "parts.liner.length_m"}};
    for (const auto& [source, path] : figures)
        if (source.empty())
            entry.refuse(entry.value(), path, "is missing", "write it with its source");
}

} // namespace

WearParts read_wear_parts(const std::vector<Document>& files, const Bibliography& sources) {
    WearParts wear;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, file_record, "");
        if (has_signature(entry)) {
            Bibliography known = sources;
            add_sources(known, entry);
            if (const auto parts = entry.object("parts"))
                read_parts(wear, *parts, known);
        }
        if (&file == &files.back())
            refuse_missing(wear, reading, entry);
        refuse_if_any(Origin::table, reading.faults);
    }
    return wear;
}

} // namespace ringfill
