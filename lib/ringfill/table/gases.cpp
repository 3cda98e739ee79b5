#include <ringfill/table/gases.hpp>

#include <array>

#include <ringfill/document/described.hpp>
#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr Span flow{0, 100, true};
constexpr Span times{1, 5};
constexpr std::array gas_words = {"argon"sv, "argon_mixture"sv, "argon_helium"sv, "carbon_dioxide"sv};

constexpr std::array gas_fields = {
    Field{.name = "words", .required = true, .span = table_words, .sample = R"("argon")"},
    Field{.name = "holds", .kind = Kind::word, .required = true, .sample = R"("argon")", .words = gas_words},
    Field{.name = "flow_L_min_per_mm",
          .kind = Kind::sourced,
          .required = true,
          .span = flow,
          .sample = R"([12, "practice"])"},
    Field{.name = "sprays", .kind = Kind::flag, .sample = "true"},
    Field{.name = "spray_times",
          .kind = Kind::sourced_range,
          .span = times,
          .sample = R"([1.1, 1.35, "practice"])"},
    Field{.name = "spray_note", .span = table_words, .sample = R"("it takes a clean wire")"},
    Field{.name = "composition_source", .required = true, .span = table_words, .sample = R"("ISO14175")"},
};
constexpr Record gas_record{"a gas", "", gas_fields};

constexpr std::array format = {"ringfill-gases/1"sv};
constexpr std::array file_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-gases/1")",
          .words = format},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record},
    Field{.name = "gases",
          .kind = Kind::object,
          .shape = Shape::named,
          .required = true,
          .sample = "{ ... }",
          .record = &gas_record},
};
constexpr Record file_record{"the table of gases", "", file_fields};

Gas read_gas(const std::string& name, const Entry& row, const Bibliography& sources) {
    const SourcedReader reader(row, sources);
    return {name,
            row.text("words").value_or(""),
            row.word("holds").value_or(""),
            reader.source_key("composition_source"),
            reader.number("flow_L_min_per_mm").value_or(Sourced<double>{}),
            row.flag("sprays").value_or(true),
            reader.range("spray_times"),
            row.text("spray_note").value_or("")};
}

} // namespace

std::vector<Gas> read_gases(const std::vector<Document>& files, const Bibliography& sources) {
    std::vector<Gas> gases;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, file_record, "");
        if (has_signature(entry)) {
            Bibliography known = sources;
            add_sources(known, entry);
            for (const auto& [name, row] : entry.named_objects("gases"))
                put_row(gases, read_gas(name, row, known));
        }
        refuse_if_any(Origin::table, reading.faults);
    }
    return gases;
}

} // namespace ringfill
