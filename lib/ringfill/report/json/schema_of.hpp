#pragma once

#include <array>
#include <concepts>
#include <iterator>
#include <optional>
#include <span>
#include <string_view>
#include <type_traits>
#include <variant>

#include <ringfill/report/json/members.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

// The schema of a part of the result, made from its type (members.hpp): SchemaOf<T>::made().

/// A member of an object, or members that stand in the place of an object without a key.
struct SchemaRow {
    std::string_view key;
    bool may_be_absent = false;
    Value::Object (*made)() = nullptr;
    std::span<const SchemaRow> members = {};
};

Value::Object schema_of_type(const char* type);
Value::Object schema_of_words(std::span<const std::string_view> words);
Value::Object schema_of_list(Value::Object elements);
Value::Object schema_of_names(Value::Object each);
Value::Object schema_of_object(std::span<const SchemaRow> rows);

template <class T>
struct SchemaOf {
    static Value::Object made() {
        if constexpr (requires(T value) { value.part(); })
            return SchemaOf<decltype(std::declval<T>().part())>::made();
        else if constexpr (std::is_enum_v<T>)
            return schema_of_words(enum_words<T>);
        else if constexpr (std::same_as<T, bool>)
            return schema_of_type("boolean");
        else if constexpr (std::is_integral_v<T>)
            return schema_of_type("integer");
        else if constexpr (std::is_floating_point_v<T> || is_quantity<T>)
            return schema_of_type("number");
        else if constexpr (std::is_convertible_v<T, std::string_view>)
            return schema_of_type("string");
        else
            return schema_of_list(SchemaOf<typename T::value_type>::made());
    }
};
template <class T>
struct SchemaOf<std::optional<T>> : SchemaOf<T> {};
template <class T>
struct SchemaOf<Sourced<T>> : SchemaOf<T> {};
template <class... Either>
struct SchemaOf<std::variant<Either...>> {
    static Value::Object made() { return {{"anyOf", Value::List{SchemaOf<Either>::made()...}}}; }
};
template <FixedText Said>
struct SchemaOf<Always<Said>> {
    static Value::Object made() { return {{"const", Said.view()}}; }
};
template <class Each>
struct SchemaOf<ListOf<Each>> {
    static Value::Object made() { return schema_of_list(SchemaOf<Each>::made()); }
};
template <class Each>
struct SchemaOf<ByName<Each>> {
    static Value::Object made() { return schema_of_names(SchemaOf<Each>::made()); }
};

template <class... Part>
struct SchemaRows;
template <class Part>
struct RowOf;
template <FixedText Name, class T>
struct RowOf<Keyed<Name, T>> {
    static constexpr SchemaRow row{Name.view(), requires(T value){value.has_value();
}, SchemaOf<T>::made
}; // namespace ringfill
}
;
template <class... Part>
struct RowOf<Described<Part...>> {
    static constexpr SchemaRow row{{}, false, nullptr, SchemaRows<Part...>::all};
};
template <class... Part>
struct RowOf<std::optional<Described<Part...>>> {
    static constexpr SchemaRow row{{}, true, nullptr, SchemaRows<Part...>::all};
};
template <class... Part>
struct SchemaRows {
    static constexpr std::array<SchemaRow, sizeof...(Part)> all{RowOf<Part>::row...};
};

template <class... Part>
struct SchemaOf<Described<Part...>> {
    static Value::Object made() { return schema_of_object(SchemaRows<Part...>::all); }
};

} // namespace ringfill
