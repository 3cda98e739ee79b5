#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <ringfill/document/described.hpp>
#include <ringfill/document/entry.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// A field's quantity in the SI unit of its kind: as written, or the field's fallback when absent (then it is
/// noted as assumed). Nothing when absent without fallback, or when faulty (then the fault is noted).
std::optional<double> measured_si(const Entry& entry, const Field& field);
inline std::optional<double> measured_si(const Entry& entry, std::string_view name) {
    return measured_si(entry, entry.field(name));
}

/// The same as a typed quantity.
template <class Quantity>
std::optional<Quantity> measured(const Entry& entry, std::string_view name) {
    const auto value = measured_si(entry, name);
    return value ? std::optional(in_si<Quantity>(*value)) : std::nullopt;
}

/// The quantities of a list field in SI; faulty elements are noted and left out.
std::vector<double> measured_list_si(const Entry& entry, const Field& field);

inline std::vector<double> measured_list_si(const Entry& entry, std::string_view name) {
    return measured_list_si(entry, entry.field(name));
}

template <class Quantity>
std::vector<Quantity> measured_list(const Entry& entry, const Field& field) {
    std::vector<Quantity> list;
    for (const double value : measured_list_si(entry, field))
        list.push_back(in_si<Quantity>(value));
    return list;
}
template <class Quantity>
std::vector<Quantity> measured_list(const Entry& entry, std::string_view name) {
    return measured_list<Quantity>(entry, entry.field(name));
}

/// The kind of field that a quantity is read from.
template <class Quantity>
inline constexpr Kind kind_of = Kind::object; // none
template <>
inline constexpr Kind kind_of<Length> = Kind::length;
template <>
inline constexpr Kind kind_of<Volume> = Kind::volume;
template <>
inline constexpr Kind kind_of<Mass> = Kind::mass;
template <>
inline constexpr Kind kind_of<Speed> = Kind::speed;
template <>
inline constexpr Kind kind_of<VolumeFlow> = Kind::volume_flow;
template <>
inline constexpr Kind kind_of<MassFlow> = Kind::mass_flow;
template <>
inline constexpr Kind kind_of<Current> = Kind::current;
template <>
inline constexpr Kind kind_of<Voltage> = Kind::voltage;
template <>
inline constexpr Kind kind_of<Power> = Kind::power;
template <>
inline constexpr Kind kind_of<Conductance> = Kind::conductance;
template <>
inline constexpr Kind kind_of<EnergyPerLength> = Kind::energy_per_length;
template <>
inline constexpr Kind kind_of<Temperature> = Kind::temperature;
template <>
inline constexpr Kind kind_of<Angle> = Kind::angle;
template <>
inline constexpr Kind kind_of<Turning> = Kind::turning;
template <>
inline constexpr Kind kind_of<Time> = Kind::time;

// Members that are quantities: one, a list, or two of a list, the lower one first or not.
template <class Unit>
struct FieldOf<units::quantity<Unit>> {
    using Quantity = units::quantity<Unit>;
    static constexpr Kind kind = kind_of<Quantity>;
    static bool fill(const Entry& entry, const Field& field, Quantity& to) {
        const auto si = measured_si(entry, field);
        if (si)
            to = in_si<Quantity>(*si);
        return si.has_value();
    }
    static Value give(const Field&, const Quantity& quantity) { return quantity.value(); }
};
/// One that may be absent; so it is where a word stands in its place.
template <class Unit>
struct FieldOf<std::optional<units::quantity<Unit>>> : FieldOf<units::quantity<Unit>> {
    using Quantity = units::quantity<Unit>;
    static bool fill(const Entry& entry, const Field& field, std::optional<Quantity>& to) {
        to.reset();
        if (const Value* value = entry.find(field); value && value->text() && field.has_word(*value->text()))
            return true;
        const auto si = measured_si(entry, field);
        if (si)
            to = in_si<Quantity>(*si);
        return si.has_value();
    }
    static Value give(const Field& field, const std::optional<Quantity>& quantity) {
        if (quantity)
            return quantity->value();
        return field.words.empty() ? Value() : Value(field.words.front());
    }
};
template <class Unit>
struct FieldOf<std::vector<units::quantity<Unit>>> {
    using Quantity = units::quantity<Unit>;
    static constexpr Kind kind = kind_of<Quantity>;
    static constexpr Shape shape = Shape::list;
    static bool fill(const Entry& entry, const Field& field, std::vector<Quantity>& to) {
        const bool stands = entry.find(field) != nullptr;
        if (stands)
            to = measured_list<Quantity>(entry, field);
        return stands;
    }
    static Value give(const Field&, const std::vector<Quantity>& quantities) {
        Value::List list;
        for (const Quantity& quantity : quantities)
            list.emplace_back(quantity.value());
        return list.empty() ? Value() : Value(std::move(list));
    }
};
template <class Unit>
struct FieldOf<std::pair<units::quantity<Unit>, units::quantity<Unit>>> {
    using Quantity = units::quantity<Unit>;
    static constexpr Kind kind = kind_of<Quantity>;
    static constexpr Shape shape = Shape::list;
    static constexpr void complete(Field& field) { field.least = field.most = 2; }
    static bool fill(const Entry& entry, const Field& field, std::pair<Quantity, Quantity>& to) {
        const auto both = measured_list_si(entry, field);
        if (both.size() == 2)
            to = {in_si<Quantity>(both[0]), in_si<Quantity>(both[1])};
        return both.size() == 2;
    }
    static Value give(const Field&, const std::pair<Quantity, Quantity>& both) {
        return Value::List{both.first.value(), both.second.value()};
    }
};

/// The range of a field in words, in the unit that its kind is told in: "over 0 mm and at most 10000 mm";
/// empty for a kind without numbers.
std::string range_in_words(const Field& field);

} // namespace ringfill
