#pragma once

#include <concepts>
#include <cstddef>
#include <functional>
#include <iterator>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <tuple>
#include <type_traits>
#include <utility>
#include <vector>

#include <ringfill/document/value.hpp>
#include <ringfill/table/sourced.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {

// An object of the result is the list of its members: object(member("radius_mm", radius), member("arc_s",
// arc),
// ...). The end of a key names the unit, the type of the value its kind; a pair that does not fit does not
// compile.

/// A unit at the end of a key, and the number that stands for a quantity in it.
template <class Quantity>
struct KeyUnit {
    std::string_view name;
    double (*number)(Quantity);
};
template <class Quantity>
KeyUnit(std::string_view, double (*)(Quantity)) -> KeyUnit<Quantity>; // clang 14 asks for it

template <class Quantity>
double in_si_unit(Quantity quantity) {
    return quantity.value();
}
template <class Quantity>
double in_thousands(Quantity quantity) {
    return quantity.value() / 1e3;
}

/// All units that keys end in. One is of one kind of quantity; a kind may have several.
inline constexpr auto key_units = std::make_tuple(
    KeyUnit{"mm", mm}, KeyUnit{"um", micrometres}, KeyUnit{"m", in_si_unit<Length>}, KeyUnit{"mm2", mm2},
    KeyUnit{"mm3", mm3}, KeyUnit{"l", litres}, KeyUnit{"kg", in_si_unit<Mass>}, KeyUnit{"kg_h", kg_h},
    KeyUnit{"s", in_si_unit<Time>}, KeyUnit{"mm_min", mm_min}, KeyUnit{"m_min", m_min},
    KeyUnit{"rpm", rev_min}, KeyUnit{"deg", degrees}, KeyUnit{"degC", deg_c},
    KeyUnit{"kj", in_thousands<Energy>}, KeyUnit{"kw", in_thousands<Power>}, KeyUnit{"kj_mm", kj_mm});

/// Whether a value is a quantity, which needs a unit.
template <class T>
constexpr bool is_quantity = requires {
    typename T::unit_type;
};

/// Whether a key is a unit, or ends in one behind a low dash.
constexpr bool ends_in(std::string_view key, std::string_view unit) {
    return key == unit ||
           (key.ends_with(unit) && key.size() > unit.size() && key[key.size() - unit.size() - 1] == '_');
}

/// What a value is without its source and without the question whether it is there.
template <class T>
struct Bare {
    using type = T;
};
template <class T>
struct Bare<std::optional<T>> : Bare<T> {};
template <class T>
struct Bare<Sourced<T>> : Bare<T> {};

/// The number that stands for a T under a key, by the unit that the key ends in; null for what is no
/// quantity. Throws std::logic_error for a quantity under a key without a unit of its kind, and for a plain
/// number under a key with a unit.
template <class T>
constexpr auto number_under(std::string_view key) -> double (*)(T) {
    double (*number)(T) = nullptr;
    bool has_unit = false;
    const auto look_at = [&]<class Quantity>(const KeyUnit<Quantity>& unit) {
        if (!ends_in(key, unit.name))
            return;
        has_unit = true;
        if constexpr (std::same_as<T, Quantity>)
            number = unit.number;
    };
    std::apply([&](const auto&... unit) { (look_at(unit), ...); }, key_units);
    if (is_quantity<T> ? number == nullptr : std::is_arithmetic_v<T> && has_unit)
        throw std::logic_error("the key of a member and the kind of its value do not fit");
    return number;
}

/// The key of a member whose value is a T. One that does not fit does not compile.
template <class T>
struct Key {
    std::string_view name;
    double (*number)(T);

    consteval Key(const char* key)
        : name(key), number(number_under<T>(key)) {} // implicit, as a text is written
};

/// What stands in the result for a value; null for one that is absent.
template <class B, class T>
Value written(const Key<B>& key, T value) {
    if constexpr (requires { value.source; })
        return written(key, std::move(value.value));
    else if constexpr (requires { value.has_value(); })
        return value ? written(key, std::move(*value)) : Value();
    else if constexpr (is_quantity<T>)
        return key.number(value);
    else if constexpr (std::is_arithmetic_v<T> && !std::same_as<T, bool>)
        return static_cast<double>(value);
    else if constexpr (std::same_as<T, std::vector<std::string>>)
        return Value::List(value.begin(), value.end());
    else
        return value;
}

/// A key and its value, as the unit at the end of the key asks for.
template <class T>
Member member(Key<typename Bare<T>::type> key, T value) {
    return {std::string(key.name), written(key, std::move(value))};
}

/// Puts a member behind others unless it is absent; of the members of an object each.
template <class Part>
void put_part(Value::Object& object, Part&& part) {
    if constexpr (requires { part.value.held; }) {
        if (!std::holds_alternative<std::nullptr_t>(part.value.held))
            object.push_back(std::forward<Part>(part));
    } else if (std::optional<Value::Object> members = std::forward<Part>(part)) {
        std::move(members->begin(), members->end(), std::back_inserter(object));
    }
}

/// An object of members in their order; one that is absent leaves its key out, and the members of an object
/// without a key stand in its place.
template <class... Part>
Value::Object object(Part&&... parts) {
    Value::Object members;
    members.reserve(sizeof...(parts));
    (put_part(members, std::forward<Part>(parts)), ...);
    return members;
}

/// A value that is there only on a condition; what a function makes is made only then.
template <class T>
auto when(bool condition, T value) {
    if constexpr (std::invocable<T>)
        return condition ? std::optional(value()) : std::nullopt;
    else
        return condition ? std::optional(std::move(value)) : std::nullopt;
}

/// A text or list that is left out when it is empty.
template <class T>
std::optional<T> unless_empty(T value) {
    return value.empty() ? std::nullopt : std::optional(std::move(value));
}

/// What is made of a value that may be absent, or its member.
template <class T, class Make>
auto given(const std::optional<T>& value, Make make) {
    return value ? std::optional(std::invoke(make, *value)) : std::nullopt;
}

/// What is made of each element, and where asked for of its number, counted from 0.
template <class Range, class Make>
Value::List list_of(const Range& range, Make make) {
    Value::List list;
    list.reserve(range.size());
    for (const auto& element : range) {
        if constexpr (std::invocable<Make, decltype(element), std::size_t>)
            list.emplace_back(make(element, list.size()));
        else
            list.emplace_back(std::invoke(make, element));
    }
    return list;
}

} // namespace ringfill
