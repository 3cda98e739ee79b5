#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include <ringfill/document/document.hpp>
#include <ringfill/table/figure.hpp>

// A table is a struct, a description of what its files hold, and read_table():
//
//     struct Packs { std::vector<WirePack> wire; ... };
//     constexpr auto fields = table_fields<R"("ringfill-packs/1")">(field<&Packs::wire>("wire", wire_record,
//     "{ ... }"),
//     ...); constexpr Record packs_record = record_of<Packs>("the table of packs", "", fields); Packs packs =
//     read_table<Packs>(files, sources, packs_record);
//
// A later file corrects or adds, row by row and figure by figure.

namespace ringfill {

/// The description of a block of sources, for every table that has one.
extern const Record source_record;

/// The format of a table, "ringfill-NAME/1" in its quotes, as a template argument.
template <std::size_t Size>
struct TableFormat {
    char quoted[Size];
    constexpr TableFormat(const char (&text)[Size]) { std::copy_n(text, Size, quoted); }
};
template <TableFormat Format>
inline constexpr std::string_view format_words[] = {{Format.quoted + 1, sizeof Format.quoted - 3}};

/// What a table opens with. An unknown version is refused rather than half understood.
template <TableFormat Format>
consteval Field format_field() {
    return {.name = "format",
            .kind = Kind::word,
            .required = true,
            .sample = Format.quoted,
            .words = format_words<Format>};
}
/// A table's own sources, added to the bibliography. Noted: a key that is there already with another meaning,
/// and a second meaning for the reserved keys practice and own.
constexpr Field sources_field{
    .name = "sources", .kind = Kind::object, .shape = Shape::named, .record = &source_record};

/// The fields of a table's file: its signature, its own sources, and what it holds.
template <TableFormat Format, class... Made>
consteval auto table_fields(const Made&... own) {
    return std::array<Field, 3 + sizeof...(Made)>{
        format_field<Format>(),
        Field{.name = "description", .required = true, .span = table_words, .sample = R"("what it holds")"},
        sources_field, own...};
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
bool is_outside(const Sourced<T>& figure, const Sourced<std::pair<T, T>>& range) {
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

/// Reads a table, file after file; Whole, a void(const Table&, const Entry& last), judges what all files must
/// hold together. A member `sources` gets the sources given and the table's own. Throws Faulty
/// (Origin::table).
template <class Table, auto Whole = nullptr>
Table read_table(const std::vector<Document>& files, const Bibliography& sources, const Record& record) {
    Table table{};
    CheckWhole check = nullptr;
    if constexpr (!std::is_null_pointer_v<decltype(Whole)>)
        check = [](const Entry& last, const void* read) { Whole(*static_cast<const Table*>(read), last); };
    Bibliography* kept = nullptr;
    if constexpr (requires { table.sources = sources; }) {
        table.sources = sources;
        kept = &table.sources;
    }
    fill_table(&table, &row_tag<Table>, files, sources, kept, record, check);
    return table;
}

} // namespace ringfill
