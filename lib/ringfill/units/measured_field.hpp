#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

#include <boost/mp11/algorithm.hpp>

#include <ringfill/document/described.hpp>
#include <ringfill/document/entry.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// A field's quantity in the SI unit of its kind: as written, or the field's fallback when absent (then it is
/// noted as assumed). Nothing when absent without fallback, or when faulty (then the fault is noted).
std::optional<double> measured_si(const Entry& entry, const Field& field);

/// The quantities of a list field in SI; faulty elements are noted and left out.
std::vector<double> measured_list_si(const Entry& entry, const Field& field);

/// The quantities that fields hold, in the order of their kinds.
using MeasuredQuantities =
    std::tuple<Ratio, Length, Volume, Mass, Speed, VolumeFlow, MassFlow, Current, Voltage, Power, Conductance,
               EnergyPerLength, Temperature, Angle, Turning, Time>;

/// The kind of field that a quantity is read from.
template <class Quantity>
inline constexpr Kind kind_of = static_cast<Kind>(static_cast<std::size_t>(Kind::share) +
                                                  boost::mp11::mp_find<MeasuredQuantities, Quantity>::value);
static_assert(kind_of<Time> == Kind::time);

// Members that are quantities: one, a list, or two of a list, the lower one first or not.
template <class Unit>
struct FieldOf<units::quantity<Unit>> {
    using Quantity = units::quantity<Unit>;
    static constexpr Kind kind = kind_of<Quantity>;
    static bool fill(const Entry& entry, const Field& field, Quantity& to) {
        const auto si = measured_si(entry, field);
        return take(si ? std::optional(in_si<Quantity>(*si)) : std::nullopt, to);
    }
    static Value give(const Field&, const Quantity& quantity) { return quantity.value(); }
};
template <class Unit>
struct FieldOf<std::vector<units::quantity<Unit>>> {
    using Quantity = units::quantity<Unit>;
    static constexpr Kind kind = kind_of<Quantity>;
    static constexpr Shape shape = Shape::list;
    static bool fill(const Entry& entry, const Field& field, std::vector<Quantity>& to) {
        if (!entry.find(field))
            return false;
        to.clear();
        for (const double si : measured_list_si(entry, field))
            to.push_back(in_si<Quantity>(si));
        return true;
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
