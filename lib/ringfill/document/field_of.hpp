#pragma once

#include <algorithm>
#include <concepts>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include <ringfill/document/filled_record.hpp>

namespace ringfill {

/// How a member of some type is read from a field: its kind and shape, and fill(); give() is the way back.
/// Here: an object that fills a row of its own.
template <class T>
struct FieldOf {
    static constexpr Kind kind = Kind::object;
    static bool fill(const Entry& entry, const Field& field, T& to) {
        const auto object = entry.object(field);
        if (object)
            fill_record(to, *object);
        return object.has_value();
    }
    static Value give(const Field& field, const T& row) { return record_value(*field.record, &row); }
};

template <>
struct FieldOf<std::string> {
    static constexpr Kind kind = Kind::text;
    static bool fill(const Entry& entry, const Field& field, std::string& to) {
        return take(entry.text(field), to);
    }
    /// One of a list.
    static std::optional<std::string> read(const Entry& entry, const Value& value, const Field& field,
                                           const Spot& spot);
    static Value give(const Field&, const std::string& text) { return text.empty() ? Value() : Value(text); }
};
template <>
struct FieldOf<bool> {
    static constexpr Kind kind = Kind::flag;
    static bool fill(const Entry& entry, const Field& field, bool& to);
    static Value give(const Field& field, bool flag) {
        return field.kind == Kind::flag ? Value(flag) : word_value(field, flag ? 1 : 0);
    }
};

/// A type that is read from a single value, wherever it stands: FieldOf<T>::read().
template <class T>
concept ReadAlone = requires(const Entry& entry, const Value& value, const Field& field, const Spot& spot) {
    { FieldOf<T>::read(entry, value, field, spot) } -> std::same_as<std::optional<T>>;
};

/// A member of such a type: the value of the field, or its fallback.
template <class T>
struct FieldOfOne {
    static bool fill(const Entry& entry, const Field& field, T& to) {
        if (const Value* value = entry.find(field))
            return take(FieldOf<T>::read(entry, *value, field, entry.spot(field)), to);
        if (field.fallback.empty())
            return false;
        entry.assume(field);
        return take(FieldOf<T>::read(entry, Value(field.fallback), field, entry.spot(field)), to);
    }
};
template <>
struct FieldOf<double> : FieldOfOne<double> {
    static constexpr Kind kind = Kind::number;
    static std::optional<double> read(const Entry& entry, const Value& value, const Field& field,
                                      const Spot& spot) {
        return entry.number_in(value, field, spot);
    }
    static Value give(const Field&, double number) { return number; }
};
template <>
struct FieldOf<int> : FieldOfOne<int> {
    static constexpr Kind kind = Kind::count;
    static std::optional<int> read(const Entry& entry, const Value& value, const Field& field,
                                   const Spot& spot);
    static Value give(const Field&, int count) { return static_cast<double>(count); }
};

/// Reads each value of a list or under names into a member that holds many; faulty ones are left out.
template <ReadAlone T, class All>
bool fill_all(const Entry& entry, const Field& field, All& to) {
    if (!entry.find(field))
        return false;
    to.clear();
    for (const auto& [spot, value] : entry.elements(field))
        if (auto one = FieldOf<T>::read(entry, *value, field, spot)) {
            if constexpr (std::is_same_v<typename All::value_type, T>)
                to.push_back(std::move(*one));
            else
                to.push_back({std::string(spot.name), std::move(*one)});
        }
    return true;
}

/// A list of them.
template <ReadAlone T>
struct FieldOf<std::vector<T>> : FieldOf<T> {
    static constexpr Shape shape = Shape::list;
    static bool fill(const Entry& entry, const Field& field, std::vector<T>& to) {
        return fill_all<T>(entry, field, to);
    }
    static Value give(const Field& field, const std::vector<T>& all) {
        Value::List list;
        for (const T& one : all)
            if constexpr (std::is_same_v<T, std::string>)
                list.push_back(one); // an empty one too
            else
                list.push_back(FieldOf<T>::give(field, one));
        return list.empty() ? Value() : Value(std::move(list));
    }
};
/// Them under names of the file's choosing.
template <ReadAlone T>
struct FieldOf<std::vector<std::pair<std::string, T>>> : FieldOf<T> {
    using Named = std::vector<std::pair<std::string, T>>;
    static constexpr Shape shape = Shape::named;
    static bool fill(const Entry& entry, const Field& field, Named& to) {
        return fill_all<T>(entry, field, to);
    }
    static Value give(const Field& field, const Named& all) requires requires(const T& one) {
        FieldOf<T>::give(field, one);
    }
    {
        Value::Object object;
        for (const auto& [name, one] : all)
            object.push_back({name, FieldOf<T>::give(field, one)});
        return object.empty() ? Value() : Value(std::move(object));
    }
};
/// Two in a list, the lower one first or not.
template <ReadAlone T>
struct FieldOf<std::pair<T, T>> {
    static constexpr Kind kind = FieldOf<T>::kind;
    static constexpr Shape shape = Shape::list;
    static constexpr void complete(Field& field) { field.least = field.most = 2; }
    static bool fill(const Entry& entry, const Field& field, std::pair<T, T>& to) {
        std::vector<T> both;
        const bool is_whole = fill_all<T>(entry, field, both) && both.size() == 2;
        if (is_whole)
            to = {both[0], both[1]};
        return is_whole;
    }
    static Value give(const Field& field, const std::pair<T, T>& both) {
        return Value::List{FieldOf<T>::give(field, both.first), FieldOf<T>::give(field, both.second)};
    }
};

template <class T>
requires std::is_enum_v<T>
struct FieldOf<T> {
    static constexpr Kind kind = Kind::word;
    static bool fill(const Entry& entry, const Field& field, T& to) {
        const auto word = entry.word_index(field);
        return take(word ? std::optional(static_cast<T>(*word)) : std::nullopt, to);
    }
    static Value give(const Field& field, T value) {
        return word_value(field, static_cast<std::size_t>(value));
    }
};

/// A member that may be absent; so it is where one of the field's words stands in the place of a quantity.
template <class T>
struct FieldOf<std::optional<T>> : FieldOf<T> {
    static bool fill(const Entry& entry, const Field& field, std::optional<T>& to) {
        if (field.kind != Kind::word && !field.words.empty())
            if (const Value* value = entry.find(field);
                value && value->text() &&
                std::find(field.words.begin(), field.words.end(), *value->text()) != field.words.end()) {
                to.reset();
                return true;
            }
        T value{};
        const bool read = FieldOf<T>::fill(entry, field, value);
        if (read)
            to = std::move(value);
        return read;
    }
    static Value give(const Field& field, const std::optional<T>& value) requires requires {
        FieldOf<T>::give(field, *value);
    }
    {
        if (!value)
            return field.kind == Kind::word || field.words.empty() ? Value() : Value(field.words.front());
        Value given = FieldOf<T>::give(field, *value);
        return is_absent(given) && field.shape == Shape::list ? Value(Value::List()) : given;
    }
};

/// Puts a row into a table: in the place of the row of the same name, or at the end.
template <class Row>
void put_row(std::vector<Row>& rows, Row row) {
    const auto known =
        std::find_if(rows.begin(), rows.end(), [&](const Row& one) { return one.name == row.name; });
    if (known == rows.end())
        rows.push_back(std::move(row));
    else
        *known = std::move(row);
}

/// Rows under names of the file's choosing, or in a list.
template <class Row>
struct FieldOf<std::vector<Row>> {
    static constexpr Kind kind = Kind::object;
    static constexpr Shape shape = Shape::named;
    static constexpr bool has_name = requires(Row row) { row.name = std::string(); };
    static bool fill(const Entry& entry, const Field& field, std::vector<Row>& rows) {
        const std::vector<Entry> objects = entry.objects(field);
        rows.reserve(rows.size() + objects.size()); // a row with a quantity is copied when the list grows
        for (const Entry& one : objects)
            if constexpr (has_name)
                field.shape == Shape::named ? put_row(rows, read_record<Row>(one))
                                            : rows.push_back(read_record<Row>(one));
            else
                rows.push_back(read_record<Row>(one));
        return entry.find(field) != nullptr;
    }
    static Value give(const Field& field, const std::vector<Row>& rows) {
        if (rows.empty())
            return {};
        if constexpr (has_name)
            if (field.shape == Shape::named) {
                Value::Object named;
                for (const Row& row : rows)
                    named.push_back({row.name, record_value(*field.record, &row)});
                return named;
            }
        Value::List list;
        for (const Row& row : rows)
            list.push_back(record_value(*field.record, &row));
        return list;
    }
};

} // namespace ringfill
