#pragma once

#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include <ringfill/document/described.hpp>
#include <ringfill/table/sourced.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

using SourcedNumber = Sourced<double>;

// Figures of a table, read against the bibliography of the Reading: a value without a known source is noted
// as a fault.

/// A value of a field of the kind Kind::sourced, [number, source key], as it stands, once as low and once as
/// high; or of the kind Kind::sourced_range, [low, high, source key].
std::optional<SourcedRange<double>> sourced_figures(const Spot& spot, const Field& field);
/// A field that holds nothing but a source key; empty when absent or not known.
std::string source_key(const Entry& row, const Field& field);

/// A figure of a field in SI.
double si_of(double figure, const Field& field);

/// Its address stands for the quantity.
template <class Quantity>
inline constexpr char quantity_tag = 0;

/// A unit as the names of a table's fields end in it.
struct NameUnit {
    std::string_view name;
    const char* quantity;
    double factor = 1;
    double zero = 0;
};

/// The units that figures are given in, each of one quantity.
inline constexpr NameUnit name_units[] = {
    {"mm", &quantity_tag<Length>, 1e-3},
    {"m", &quantity_tag<Length>},
    {"L", &quantity_tag<Volume>, factor::litre},
    {"kg", &quantity_tag<Mass>},
    {"g", &quantity_tag<Mass>, 1e-3},
    {"h", &quantity_tag<Time>, factor::hour},
    {"min", &quantity_tag<Time>, factor::minute},
    {"minutes", &quantity_tag<Time>, factor::minute},
    {"mm_min", &quantity_tag<Speed>, 1e-3 * (1 / factor::minute)},
    {"m_min", &quantity_tag<Speed>, 1 / factor::minute},
    {"rpm", &quantity_tag<Turning>, 1 / factor::minute},
    {"kg_h", &quantity_tag<MassFlow>, 1 / factor::hour},
    {"L_min", &quantity_tag<VolumeFlow>, factor::litre / factor::minute},
    {"kg_m3", &quantity_tag<Density>},
    {"kg_m", &quantity_tag<LinearMass>},
    {"kW", &quantity_tag<Power>, 1e3},
    {"kJ_mm", &quantity_tag<EnergyPerLength>, 1e6},
    {"A", &quantity_tag<Current>},
    {"V", &quantity_tag<Voltage>},
    {"J_kgK", &quantity_tag<SpecificHeat>},
    {"W_mK", &quantity_tag<Conductivity>},
    {"degC", &quantity_tag<Temperature>, 1, factor::celsius_zero},
    {"degF", &quantity_tag<Temperature>, factor::kelvin_per_fahrenheit, factor::fahrenheit_zero},
};

/// Gives a field the unit that its name ends in; a name without one of the quantity's does not compile. A
/// plain number keeps its own.
template <class Quantity>
constexpr void take_unit_from_name(Field& field) {
    if constexpr (!std::is_same_v<Quantity, double>) {
        const std::string_view name = field.name;
        for (const NameUnit& unit : name_units) {
            if (unit.quantity != &quantity_tag<Quantity> || !name.ends_with(unit.name))
                continue;
            const std::size_t before = name.size() - unit.name.size();
            if (before > 0 && name[before - 1] != '_')
                continue;
            field.factor = unit.factor;
            field.zero = unit.zero;
            return;
        }
        throw std::logic_error("the name of the field does not end in a unit of its quantity");
    }
}

/// A figure of a field in SI, as a quantity or a plain number, or two of them, the lower one first.
template <class T>
struct Figure {
    using Quantity = T;
    static constexpr Kind kind = Kind::sourced;
    static T from(const std::pair<double, double>& found, const Field& field) {
        if constexpr (std::is_same_v<T, double>)
            return si_of(found.first, field);
        else
            return in_si<T>(si_of(found.first, field));
    }
};
template <class T>
struct Figure<std::pair<T, T>> {
    using Quantity = T;
    static constexpr Kind kind = Kind::sourced_range;
    static std::pair<T, T> from(const std::pair<double, double>& found, const Field& field) {
        return {Figure<T>::from(found, field), Figure<T>::from({found.second, found.second}, field)};
    }
};

template <class T>
struct FieldOf<Sourced<T>> : FieldOfOne<Sourced<T>> {
    static constexpr Kind kind = Figure<T>::kind;
    static constexpr void complete(Field& field) { take_unit_from_name<typename Figure<T>::Quantity>(field); }
    static std::optional<Sourced<T>> read(const Spot& spot, const Field& field) {
        auto found = sourced_figures(spot, field);
        if (!found)
            return std::nullopt;
        return Sourced<T>{Figure<T>::from(found->value, field), std::move(found->source)};
    }
};

/// How long a description, a title or a note in a table may be [characters].
inline constexpr Span table_words{1, 2'000};

template <class Row, std::string Row::*Member>
void fill_source_key(Row& row, const Entry& entry, const Field& field) {
    row.*Member = source_key(entry, field);
}

/// A text member that holds nothing but a source key.
template <auto Member>
constexpr MadeField source_field(std::string_view name, std::string_view sample = {}) {
    using Row = typename Filled<decltype(Member)>::Row;
    return field<&fill_source_key<Row, Member>>(name, table_words, sample);
}

} // namespace ringfill
