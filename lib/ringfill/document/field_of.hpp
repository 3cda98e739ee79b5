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
    static std::optional<std::string> read(const Spot& spot, const Field& field);
    static Value give(const Field&, const std::string& text) { return text.empty() ? Value() : Value(text); }
};
/// One of the field's words by its place; a bool without words is a flag.
template <class T>
requires(std::is_enum_v<T> || std::is_same_v<T, bool>) struct FieldOf<T> {
    static constexpr Kind kind = std::is_enum_v<T> ? Kind::word : Kind::flag;
    static bool fill(const Entry& entry, const Field& field, T& to) {
        return field.kind == Kind::flag ? take(entry.held<bool>(field), to)
                                        : take(entry.word_index(field), to);
    }
    static Value give(const Field& field, T value) {
        const auto place = static_cast<std::size_t>(value);
        if (field.kind == Kind::flag)
            return place == 1;
        return place < field.words.size() ? field.words[place] : std::string_view();
    }
};

/// A type that is read from a single value, wherever it stands: FieldOf<T>::read().
template <class T>
concept ReadAlone = requires(const Spot& spot, const Field& field) {
    { FieldOf<T>::read(spot, field) } -> std::same_as<std::optional<T>>;
};

/// A member of such a type: the value of the field, or its fallback.
template <class T>
struct FieldOfOne {
    static bool fill(const Entry& entry, const Field& field, T& to) {
        if (const Value* value = entry.find(field))
            return take(FieldOf<T>::read(entry.spot(field, *value), field), to);
        return entry.assume(field) &&
               take(FieldOf<T>::read(entry.spot(field, Value(field.fallback)), field), to);
    }
};
template <>
struct FieldOf<double> : FieldOfOne<double> {
    static constexpr Kind kind = Kind::number;
    static std::optional<double> read(const Spot& spot, const Field& field) { return spot.number_in(field); }
    static Value give(const Field&, double number) { return number; }
};
template <>
struct FieldOf<int> : FieldOfOne<int> {
    static constexpr Kind kind = Kind::count;
    static std::optional<int> read(const Spot& spot, const Field& field);
    static Value give(const Field&, int count) { return static_cast<double>(count); }
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

/// The type of what stands in a list, or under a name of the file's choosing.
template <class One>
struct Listed {
    using Type = One;
};
template <ReadAlone T>
struct Listed<std::pair<std::string, T>> {
    using Type = T;
};

/// Values or rows in a list or under names. Faulty values are left out.
template <class One>
struct FieldOf<std::vector<One>> : FieldOf<typename Listed<One>::Type> {
    using T = typename Listed<One>::Type;
    static constexpr bool is_pair = !std::is_same_v<One, T>; // with its name
    static constexpr bool has_name = requires(One one) { one.name = std::string(); };
    static constexpr Shape shape = ReadAlone<T> && !is_pair ? Shape::list : Shape::named;

    static bool fill(const Entry& entry, const Field& field, std::vector<One>& to) requires ReadAlone<T> {
        if (!entry.find(field))
            return false;
        to.clear();
        for (const Spot& spot : entry.elements(field))
            if (auto one = FieldOf<T>::read(spot, field)) {
                if constexpr (is_pair)
                    to.push_back({std::string(spot.name), std::move(*one)});
                else
                    to.push_back(std::move(*one));
            }
        return true;
    }
    static bool fill(const Entry& entry, const Field& field, std::vector<One>& rows) {
        const std::vector<Entry> objects = entry.objects(field);
        rows.reserve(rows.size() + objects.size()); // a row with a quantity is copied when the list grows
        for (const Entry& object : objects) {
            if constexpr (has_name)
                if (field.shape == Shape::named) {
                    put_row(rows, read_record<One>(object));
                    continue;
                }
            rows.push_back(read_record<One>(object));
        }
        return entry.find(field) != nullptr;
    }
    static Value give(const Field& field, const std::vector<One>& all) requires requires(const T& one) {
        FieldOf<T>::give(field, one);
    }
    {
        Value::Object object;
        Value::List list;
        for (const One& one : all)
            if constexpr (is_pair)
                object.push_back({one.first, FieldOf<T>::give(field, one.second)});
            else if constexpr (has_name)
                field.shape == Shape::named ? (void)object.push_back({one.name, FieldOf<T>::give(field, one)})
                                            : list.push_back(FieldOf<T>::give(field, one));
            else if constexpr (std::is_same_v<T, std::string>)
                list.push_back(one); // an empty one too
            else
                list.push_back(FieldOf<T>::give(field, one));
        return all.empty() ? Value() : list.empty() ? Value(std::move(object)) : Value(std::move(list));
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
        const bool is_whole = FieldOf<std::vector<T>>::fill(entry, field, both) && both.size() == 2;
        if (is_whole)
            to = {both[0], both[1]};
        return is_whole;
    }
    static Value give(const Field& field, const std::pair<T, T>& both) {
        return Value::List{FieldOf<T>::give(field, both.first), FieldOf<T>::give(field, both.second)};
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

} // namespace ringfill
