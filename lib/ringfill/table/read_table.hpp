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
//     constexpr auto fields = table_fields<"packs">(field<&Packs::wire>("wire", wire_record, "{ ... }"),
//     ...); constexpr Record packs_record = record_of<Packs>("the table of packs", "", fields); Packs packs =
//     read_table<Packs>(files, sources, packs_record);
//
// A later file corrects or adds, row by row and figure by figure.

namespace ringfill {

/// The description of a block of sources, for every table that has one.
extern const Record source_record;

/// Adds a table's own block of sources (field "sources") to the bibliography; noted: a key that is there
/// already with another meaning, and a second meaning for the reserved keys practice and own.
void add_sources(Bibliography& sources, const Entry& table);

/// The name of a table as a template argument.
template <std::size_t N>
struct TableName {
    char text[N];
    constexpr TableName(const char (&name)[N]) { std::copy_n(name, N, text); }
};

/// The format of a table, "ringfill-NAME/1", in quotes and without.
template <TableName Name>
struct TableFormat {
    static constexpr auto quoted = [] {
        constexpr std::string_view head = "\"ringfill-";
        constexpr std::string_view tail = "/1\"";
        constexpr std::string_view name = Name.text;
        std::array<char, head.size() + name.size() + tail.size()> text{};
        auto end = std::copy(head.begin(), head.end(), text.begin());
        end = std::copy(name.begin(), name.end(), end);
        std::copy(tail.begin(), tail.end(), end);
        return text;
    }();
    static constexpr std::string_view sample{quoted.data(), quoted.size()};
    static constexpr std::array words = {sample.substr(1, sample.size() - 2)};
};

/// The fields of a table's file: its signature, its own sources, and what it holds.
template <TableName Name, class... Made>
consteval auto table_fields(const Made&... own) {
    return std::array<Field, 3 + sizeof...(Made)>{
        bare_field("format", TableFormat<Name>::words, {}, TableFormat<Name>::sample)
            .holds(Kind::word)
            .required(),
        bare_field("description", table_words, {}, R"("what it holds")").required(),
        bare_field("sources", source_record, {}, {}).holds(Kind::object, Shape::named), own...};
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

/// Whether a table opens with its format signature (field "format") and says what it holds ("description");
/// what is missing is noted. An unknown version is refused rather than half understood.
bool has_signature(const Entry& table);

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
