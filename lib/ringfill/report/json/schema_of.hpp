#pragma once

#include <concepts>
#include <iterator>
#include <optional>
#include <string>
#include <type_traits>
#include <variant>

#include <fmt/format.h>

#include <ringfill/report/json/members.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

// The schema of a part of the result, made from its type (members.hpp): SchemaOf<T>::made().

template <class T>
struct SchemaOf {
    static Value::Object made() {
        if constexpr (requires(T value) { value.part(); })
            return SchemaOf<decltype(std::declval<T>().part())>::made();
        else if constexpr (std::is_enum_v<T>)
            return {{"enum", Value::List(std::begin(enum_words<T>), std::end(enum_words<T>))}};
        else if constexpr (std::same_as<T, bool>)
            return {{"type", "boolean"}};
        else if constexpr (std::is_integral_v<T>)
            return {{"type", "integer"}};
        else if constexpr (std::is_floating_point_v<T> || is_quantity<T>)
            return {{"type", "number"}};
        else if constexpr (std::is_convertible_v<T, std::string_view>)
            return {{"type", "string"}};
        else
            return SchemaOf<ListOf<typename T::value_type>>::made();
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
    static Value::Object made() { return {{"type", "array"}, {"items", SchemaOf<Each>::made()}}; }
};
template <class Each>
struct SchemaOf<ByName<Each>> {
    static Value::Object made() {
        return {{"type", "object"}, {"additionalProperties", SchemaOf<Each>::made()}};
    }
};

/// What a schema says of the members of an object.
struct Properties {
    Value::Object all;
    Value::List required;

    template <FixedText Name, class T>
    void add(const Keyed<Name, T>*, bool always) {
        Value::Object schema = SchemaOf<T>::made();
        const auto describe = [&](const auto& unit) {
            if (ends_in(Name.view(), unit.name))
                schema.push_back({"description", fmt::format("in {}", unit.sign)});
        };
        std::apply([&](const auto&... unit) { (describe(unit), ...); }, key_units);
        all.push_back({std::string(Name.view()), std::move(schema)});
        if (always && !requires(T value) { value.has_value(); })
            required.emplace_back(Name.view());
    }
    template <class... Part>
    void add(const Described<Part...>*, bool always) {
        (add(static_cast<const Part*>(nullptr), always), ...);
    }
    template <class... Part>
    void add(const std::optional<Described<Part...>>*, bool) {
        add(static_cast<const Described<Part...>*>(nullptr), false);
    }
};

template <class... Part>
struct SchemaOf<Described<Part...>> {
    static Value::Object made() {
        Properties properties;
        properties.add(static_cast<const Described<Part...>*>(nullptr), true);
        return {{"type", "object"},
                {"properties", std::move(properties.all)},
                {"required", std::move(properties.required)},
                {"additionalProperties", false}};
    }
};

} // namespace ringfill
