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

/// A value as a quantity in the SI unit of its field's kind, wherever it stands; nothing when it is faulty
/// (then the fault is noted).
std::optional<double> measured_si(const Spot& spot, const Field& field);

/// The quantities that fields hold, in the order of their kinds.
using MeasuredQuantities =
    std::tuple<Ratio, Length, Volume, Mass, Speed, VolumeFlow, MassFlow, Current, Voltage, Power, Conductance,
               EnergyPerLength, Temperature, Angle, Turning, Time>;

/// The kind of field that a quantity is read from.
template <class Quantity>
inline constexpr Kind kind_of = static_cast<Kind>(static_cast<std::size_t>(Kind::share) +
                                                  boost::mp11::mp_find<MeasuredQuantities, Quantity>::value);
static_assert(kind_of<Time> == Kind::time);

template <class Unit>
struct FieldOf<units::quantity<Unit>> : FieldOfOne<units::quantity<Unit>> {
    using Quantity = units::quantity<Unit>;
    static constexpr Kind kind = kind_of<Quantity>;
    static std::optional<Quantity> read(const Spot& spot, const Field& field) {
        const auto si = measured_si(spot, field);
        return si ? std::optional(in_si<Quantity>(*si)) : std::nullopt;
    }
    static Value give(const Field&, const Quantity& quantity) { return quantity.value(); }
};

/// The range of a field in words, in the unit that its kind is told in: "over 0 mm and at most 10000 mm";
/// empty for a kind without numbers.
std::string range_in_words(const Field& field);

} // namespace ringfill
