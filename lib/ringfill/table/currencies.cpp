#include <ringfill/table/currencies.hpp>

#include <algorithm>
#include <array>
#include <cmath>

#include <ringfill/document/described.hpp>
#include <ringfill/table/read_table.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr std::array currency_fields = {
    Field{.name = "exponent",
          .kind = Kind::sourced,
          .required = true,
          .span = {0, 4},
          .sample = R"([2, "ISO4217"])"},
};
constexpr Record currency_record{"a currency", "", currency_fields};

constexpr std::array format = {"ringfill-currencies/1"sv};
constexpr std::array file_fields = {
    Field{.name = "format",
          .kind = Kind::word,
          .required = true,
          .sample = R"("ringfill-currencies/1")",
          .words = format},
    Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
    Field{.name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record},
    Field{.name = "currencies",
          .kind = Kind::object,
          .shape = Shape::named,
          .required = true,
          .sample = "{ ... }",
          .record = &currency_record},
};
constexpr Record file_record{"the table of currencies", "", file_fields};

bool is_code(const std::string& name) {
    return name.size() == 3 &&
           std::all_of(name.begin(), name.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
}

Currency read_currency(const std::string& name, const Entry& row, const Bibliography& sources) {
    if (!is_code(name))
        row.refuse(row.value(), row.path(), "is no code of a currency",
                   "write three capital letters, as ISO 4217 has them");
    const auto exponent = SourcedReader(row, sources).number("exponent").value_or(Sourced<double>{});
    if (exponent.value != std::floor(exponent.value))
        row.refuse("exponent", "is not a whole number", "write how many decimals the currency has");
    return {name, {static_cast<int>(exponent.value), exponent.source}};
}

} // namespace

std::vector<Currency> read_currencies(const std::vector<Document>& files, const Bibliography& sources) {
    std::vector<Currency> currencies;
    for (const Document& file : files) {
        Reading reading{file};
        const Entry entry(reading, file.root, file_record, "");
        if (has_signature(entry)) {
            Bibliography known = sources;
            add_sources(known, entry);
            for (const auto& [name, row] : entry.named_objects("currencies"))
                put_row(currencies, read_currency(name, row, known));
        }
        refuse_if_any(Origin::table, reading.faults);
    }
    return currencies;
}

} // namespace ringfill
