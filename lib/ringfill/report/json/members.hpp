#pragma once

#include <algorithm>
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

#include <ringfill/document/fixed_text.hpp>
#include <ringfill/document/value.hpp>
#include <ringfill/document/word_of.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {

// An object of the result is the list of its members: object(member<"radius_mm">(radius),
// member<"arc_s">(arc), ...). The end of a key names the unit, the type of the value its kind; a pair that
// does not fit does not compile. Beside its value each part has, as its type, what is true of it in every
// result: keys, kinds, units, words, and which members may be absent. The schema is made from these types
// (schema_of.hpp), so there is no second list to keep.

/// A unit at the end of a key, how people write it, and the number that stands for a quantity in it.
template <class Quantity>
struct KeyUnit {
    std::string_view name;
    std::string_view sign;
    double (*number)(Quantity);
};
template <class Quantity> // clang 14 asks for it
KeyUnit(std::string_view, std::string_view, double (*)(Quantity))->KeyUnit<Quantity>;

template <class Quantity>
double in_thousands(Quantity quantity) {
    return quantity.value() / 1e3;
}

/// All units that keys end in. One is of one kind of quantity; a kind may have several.
inline constexpr auto key_units = std::make_tuple(
    KeyUnit{"mm", "mm", mm}, KeyUnit{"um", "µm", micrometres}, KeyUnit{"m", "m", number_in_si<Length>},
    KeyUnit{"mm2", "mm²", mm2}, KeyUnit{"mm3", "mm³", mm3}, KeyUnit{"l", "L", litres},
    KeyUnit{"kg", "kg", number_in_si<Mass>}, KeyUnit{"kg_h", "kg/h", kg_h},
    KeyUnit{"s", "s", number_in_si<Time>}, KeyUnit{"mm_min", "mm/min", mm_min},
    KeyUnit{"m_min", "m/min", m_min}, KeyUnit{"rpm", "rev/min", rev_min}, KeyUnit{"deg", "degrees", degrees},
    KeyUnit{"degC", "°C", deg_c}, KeyUnit{"kj", "kJ", in_thousands<Energy>},
    KeyUnit{"kw", "kW", in_thousands<Power>}, KeyUnit{"kj_mm", "kJ/mm", kj_mm});

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

/// A text that is the same in every result.
template <FixedText Said>
struct Always : std::string_view {
    constexpr Always() : std::string_view(Said.view()) {}
};

/// A member of an object: a key, and a value of some kind, which may be absent.
template <FixedText Name, class T>
struct Keyed {
    T value;

    static constexpr std::string_view key() { return Name.view(); }
};
/// An object of members.
template <class... Part>
struct Described : Value::Object {};
/// An object whose keys are names that a job, a family or a table gives.
template <class Each>
struct ByName : Value::Object {};
template <class Each>
struct ListOf : Value::List {};

/// What is made of each element, and where asked for of its number, counted from 0.
template <class Range, class Make>
auto list_of(const Range& range, Make make) {
    const auto made = [&](const auto& element, std::size_t i) {
        if constexpr (std::invocable<Make, decltype(element), std::size_t>)
            return make(element, i);
        else
            return std::invoke(make, element);
    };
    ListOf<decltype(made(*range.begin(), 0))> list;
    list.reserve(range.size());
    for (const auto& element : range)
        list.emplace_back(made(element, list.size()));
    return list;
}

/// The number that stands for each quantity in a T under a key; null where it holds none.
template <class T>
constexpr auto number_for(std::string_view key) {
    if constexpr (requires(T value) { value.source; })
        return number_for<decltype(T::value)>(key);
    else if constexpr (is_quantity<T> || std::is_arithmetic_v<T>)
        return number_under<T>(key);
    else if constexpr (requires { typename T::value_type; } && !std::is_convertible_v<T, Value>)
        return number_for<typename T::value_type>(key);
    else
        return nullptr;
}

/// What stands in the result for a value; null for one that is absent.
/// @tparam Number stands for a quantity: not the key, so that values of one kind share their code
template <auto Number, class T>
Value written(T value) {
    if constexpr (requires { value.source; })
        return written<Number>(std::move(value.value));
    else if constexpr (requires { value.has_value(); })
        return value ? written<Number>(*std::move(value)) : Value();
    else if constexpr (requires { value.index(); })
        return std::visit([](auto one) { return written<nullptr>(one); }, value);
    else if constexpr (requires { value.part(); })
        return value.part();
    else if constexpr (std::is_enum_v<T>)
        return word_of(value);
    else if constexpr (is_quantity<T>)
        return Number(value);
    else if constexpr (std::is_arithmetic_v<T> && !std::same_as<T, bool>)
        return static_cast<double>(value);
    else if constexpr (std::is_convertible_v<T, Value>)
        return value;
    else
        return list_of(value, written<Number, typename T::value_type>);
}

/// A key and its value.
template <FixedText Name, class T>
Keyed<Name, T> member(T value) {
    return {std::move(value)};
}

/// Puts a member behind others unless it is absent.
inline void put_member(Value::Object& object, std::string_view key, Value&& value) {
    if (std::holds_alternative<std::nullptr_t>(value.held))
        return;
    Member& added = object.emplace_back();
    added.name = key;
    added.value.held = std::move(value.held);
}
template <FixedText Name, class T>
void put_part(Value::Object& object, Keyed<Name, T>&& part) {
    put_member(object, Name.view(), written<number_for<T>(Name.view())>(std::move(part.value)));
}
template <FixedText Name, class T>
void put_part(Value::Object& object, const Keyed<Name, T>& part) {
    put_part(object, Keyed<Name, T>(part));
}
/// Of the members of an object each.
inline void put_part(Value::Object& object, std::optional<Value::Object> members) {
    if (members)
        std::move(members->begin(), members->end(), std::back_inserter(object));
}

/// An object of members in their order; one that is absent leaves its key out, and the members of an object
/// without a key stand in its place.
template <class... Part>
Described<std::decay_t<Part>...> object(Part&&... parts) {
    Described<std::decay_t<Part>...> members;
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

/// An object by the names of its elements, of what is made of each.
template <class Range, class Name, class Make>
auto by_name(const Range& range, Name name, Make make) {
    ByName<std::decay_t<std::invoke_result_t<Make, decltype(*range.begin())>>> members;
    for (const auto& element : range)
        members.push_back({std::invoke(name, element), std::invoke(make, element)});
    return members;
}

} // namespace ringfill
