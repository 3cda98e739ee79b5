#pragma once

#include <cstddef>
#include <span>
#include <string_view>

namespace ringfill {

class Entry;
struct Field;
struct Record;
struct Value;

/// What a field holds. A quantity is a text with its unit; only a length may be a bare number, in the job's
/// units.
enum class Kind {
    text,
    word,   ///< one of the field's words
    flag,   ///< true or false
    count,  ///< a whole number
    number, ///< a plain number: a ratio, a percentage of composition, a price
    share,  ///< a percentage with its sign
    length,
    volume,
    mass,
    speed,
    volume_flow,
    mass_flow,
    current,
    voltage,
    power,
    conductance, ///< heat flow per degree
    energy_per_length,
    temperature,
    angle,
    turning, ///< revolutions a minute
    time,
    sourced,       ///< in tables: a number and its source key, [7850, "EN1993-1-2"]
    sourced_range, ///< in tables: two numbers and their source key, [2, 12, "practice"]
    object,
};

/// How many of them: one, a list, or an object with names of the user's choosing.
enum class Shape { one, list, named };

/// The values a field may have, in the SI unit of its kind (lists: how many, in `least` and `most`).
struct Span {
    double low = 0;
    double high = 0;
    bool low_is_open = false; ///< the low end itself is not allowed
};

/// Reads a field of an entry into its member of a row; whether the member got a value.
using Fill = bool (*)(const Entry& entry, const Field& field, void* row);

/// The member of a row as a value to be read again: quantities as numbers in SI; null when it is absent.
using Give = Value (*)(const Field& field, const void* row);

/// One field of a document, described once for the reader, the starter job, the help and the schema.
/// Described with its member by field() (document/described.hpp), it also fills it.
struct Field {
    std::string_view name;
    Kind kind = Kind::text;
    Shape shape = Shape::one;
    bool required = false;
    Span span = {};
    std::string_view fallback = {};        ///< the value assumed when absent, as a person would write it
    std::string_view fallback_source = {}; ///< its source key
    std::string_view help = {};
    std::string_view sample = {};                 ///< what a starter job shows, as JSON
    bool starts = false;                          ///< not required, yet a starter job has it
    std::span<const std::string_view> words = {}; ///< for a word; for a quantity, texts allowed beside it
    const Record* record = nullptr;               ///< of an object
    std::size_t least = 0;                        ///< of a list
    std::size_t most = 0;
    int decimals = 6;          ///< at most, of a number that is kept exactly as it is written
    Fill fill = nullptr;       ///< null: the record's reader does it by hand
    Give give = nullptr;       ///< null: the row keeps nothing of it
    const void* row = nullptr; ///< stands for the type of the row that has the member
    double factor = 1;         ///< of a figure in a table: SI = figure × factor + zero
    double zero = 0;
};

/// The fields of one object.
struct Record {
    std::string_view name;
    std::string_view help;
    std::span<const Field> fields;
    const void* row = nullptr; ///< stands for the type of the row that the fields fill
    void (*check)(const Entry& entry, void* row) = nullptr; ///< what several fields must keep together

    /// The field of that name, or null.
    const Field* find(std::string_view field) const;
};

/// The kind in words with an example, for help and error messages: `a length such as "90.4 mm"`.
std::string_view kind_in_words(Kind kind);

} // namespace ringfill
