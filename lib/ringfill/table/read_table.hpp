#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include <ringfill/document/document.hpp>
#include <ringfill/document/fixed_text.hpp>
#include <ringfill/table/figure.hpp>

// A table is a struct and a read_table() that describes what its files hold:
//
//     struct Packs { std::vector<WirePack> wire; ... };
//     constexpr auto wire_record = table_record<WirePack>("a spool", field<&WirePack::units>(...), ...);
//     Packs packs = read_table<Packs, R"("ringfill-packs/1")">(files, sources, "the table of packs",
//                                                              field<&Packs::wire>("wire", wire_record));
//
// A later file corrects or adds, row by row and figure by figure.

namespace ringfill {

/// The description of a block of sources, for every table that has one.
extern const Record source_record;

/// The words of a table's format, "ringfill-NAME/1" in its quotes.
template <FixedText Format>
inline constexpr std::string_view format_words[] = {Format.view().substr(1, Format.view().size() - 2)};

/// What a table opens with. An unknown version is refused rather than half understood.
template <FixedText Format>
constexpr Field format_field() { // not consteval: clang 14 loses what its words point at
    return {.name = "format",
            .kind = Kind::word,
            .required = true,
            .sample = Format.view(),
            .words = format_words<Format>};
}
/// A table's own sources, added to the bibliography. Noted: a key that is there already with another meaning,
/// and a second meaning for the reserved keys practice and own.
constexpr Field sources_field{
    .name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record};

/// What a table says of itself.
constexpr Field description_field{
    .name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"};

/// The description of an object in a table, which holds its own fields.
template <std::size_t Size>
struct RecordOf : Record {
    std::array<Field, Size> own;

    constexpr RecordOf(const Record& record, const std::array<Field, Size>& described)
        : Record(record), own(described) {
        fields = own;
    }
    RecordOf(const RecordOf&) = delete;
};

/// Describes an object of a table by its fields, which fill a Row; Check as in record_of(). Does not compile
/// with a field of another row.
template <class Row, auto Check = nullptr, class... Made>
constexpr RecordOf<sizeof...(Made)> table_record(std::string_view name, const Made&... made) {
    if (((made.fill && made.row != &row_tag<Row>) || ...))
        throw std::logic_error("a field of another row");
    Record record = record_of<Row, Check>({}, {}, {});
    record.name = name;
    return {record, {made...}};
}

/// The words of UnitSystem, in its order.
inline constexpr std::string_view unit_words[] = {"mm", "inch"};

/// A table that is nothing but rows.
template <class Row>
struct Rows {
    std::vector<Row> rows;
};

/// Whether a figure lies outside the range that stands beside it.
template <class T>
bool is_outside(const Sourced<T>& figure, const SourcedRange<T>& range) {
    return figure.value < range.value.first || figure.value > range.value.second;
}

/// Judges a table when its last file is read and has no fault so far.
using CheckWhole = void (*)(const Entry& last, const void* table);

/// Fills a table of such rows from its files. One of them must hold each figure of an object that fills the
/// table itself. Throws Faulty (Origin::table) for the faults of the first file
/// that has any.
/// @param kept what the sources of all files are added to; null: those of a file are for it alone
void fill_table(void* table, const void* row, const std::vector<Document>& files, const Bibliography& sources,
                Bibliography* kept, const Record& record, CheckWhole whole);

/// Reads a table, file after file: its signature, its own sources, and what it holds. EachFile, a
/// void(Table&, const Entry&), judges what is read so far, Whole, a void(const Table&, const Entry& last),
/// what all files must hold together. Throws Faulty (Origin::table).
template <class Table, FixedText Format, auto EachFile = nullptr, auto Whole = nullptr, class... Made>
Table read_table(const std::vector<Document>& files, const Bibliography& sources, std::string_view name,
                 const Made&... own) {
    const auto record =
        table_record<Table, EachFile>(name, format_field<Format>(), description_field, sources_field, own...);
    CheckWhole check = nullptr;
    if constexpr (!std::is_null_pointer_v<decltype(Whole)>)
        check = [](const Entry& last, const void* read) { Whole(*static_cast<const Table*>(read), last); };
    Table table{};
    Bibliography* kept = nullptr;
    if constexpr (requires { table.sources = sources; }) {
        table.sources = sources; // with them go the table's own
        kept = &table.sources;
    }
    fill_table(&table, &row_tag<Table>, files, sources, kept, record, check);
    return table;
}

/// Reads a table that is nothing but rows under a name of their own, which must be there.
template <class Row, FixedText Format, auto Whole = nullptr>
std::vector<Row> read_rows(const std::vector<Document>& files, const Bibliography& sources,
                           std::string_view name, std::string_view rows, const Record& row_record) {
    return read_table<Rows<Row>, Format, nullptr, Whole>(
               files, sources, name, field<&Rows<Row>::rows>(rows, row_record, "{ ... }").required())
        .rows;
}

} // namespace ringfill
