#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>

#include <ringfill/document/entry.hpp>
#include <ringfill/document/field.hpp>

namespace ringfill {

/// Its address stands for the type of a row.
template <class Row>
inline constexpr char row_tag = 0;

/// A row as an object with a member for each field that it gives something for, to be read again by the same
/// description: quantities are numbers in SI.
Value record_value(const Record& record, const void* row);

inline bool is_absent(const Value& value) {
    return std::holds_alternative<std::nullptr_t>(value.held);
}

/// Moves what was found, an optional or a pointer to it, into a member; whether there was anything.
template <class Found, class T>
bool take(Found found, T& to) {
    if (found)
        to = static_cast<T>(std::move(*found));
    return static_cast<bool>(found);
}

/// Fills a row from an entry whose record describes such rows; what is absent or faulty stays as it is.
template <class Row>
void fill_record(Row& row, const Entry& entry) {
    entry.fill(&row, &row_tag<Row>);
}

/// A row with the name it stands under and its path, if it has members for them.
template <class Row>
Row read_record(const Entry& entry) {
    Row row{};
    if constexpr (requires { row.name = std::string(); })
        row.name = entry.name();
    if constexpr (requires { row.path = std::string(); })
        row.path = entry.path();
    fill_record(row, entry);
    return row;
}

} // namespace ringfill
