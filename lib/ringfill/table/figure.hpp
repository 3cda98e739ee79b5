#pragma once

#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <ringfill/document/described.hpp>
#include <ringfill/table/sourced.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

using SourcedNumber = Sourced<double>;
using SourcedRange = Sourced<std::pair<double, double>>;

// Figures of a table, read against the bibliography of the Reading: a value without a known source is noted
// as a fault.

/// A field of the kind Kind::sourced, [number, source key], as it stands.
std::optional<SourcedNumber> sourced_number(const Entry& row, const Field& field);
/// A field of the kind Kind::sourced_range, [low, high, source key].
std::optional<SourcedRange> sourced_range(const Entry& row, const Field& field);
/// A field that holds nothing but a source key; empty when absent or not known.
std::string source_key(const Entry& row, const Field& field);
/// A named field of values: { "C": [0.46, source key], … }.
std::vector<std::pair<std::string, SourcedNumber>> sourced_named(const Entry& row, const Field& field);

/// A figure of a field in SI.
double si_of(double figure, const Field& field);

/// A unit as the names of a table's fields end in it.
struct NameUnit {
    std::string_view name;
    double factor = 1;
    double zero = 0;
};

/// The units that figures of a quantity are given in.
template <class Quantity>
inline constexpr NameUnit name_units[] = {{""}};
template <>
inline constexpr NameUnit name_units<Length>[] = {{"mm", 1e-3}, {"m"}};
template <>
inline constexpr NameUnit name_units<Volume>[] = {{"L", factor::litre}};
template <>
inline constexpr NameUnit name_units<Mass>[] = {{"kg"}, {"g", 1e-3}};
template <>
inline constexpr NameUnit name_units<Time>[] = {
    {"h", factor::hour}, {"min", factor::minute}, {"minutes", factor::minute}};
template <>
inline constexpr NameUnit name_units<Speed>[] = {{"mm_min", 1e-3 * (1 / factor::minute)},
                                                 {"m_min", 1 / factor::minute}};
template <>
inline constexpr NameUnit name_units<Turning>[] = {{"rpm", 1 / factor::minute}};
template <>
inline constexpr NameUnit name_units<MassFlow>[] = {{"kg_h", 1 / factor::hour}};
template <>
inline constexpr NameUnit name_units<VolumeFlow>[] = {{"L_min", factor::litre / factor::minute}};
template <>
inline constexpr NameUnit name_units<Density>[] = {{"kg_m3"}};
template <>
inline constexpr NameUnit name_units<LinearMass>[] = {{"kg_m"}};
template <>
inline constexpr NameUnit name_units<Power>[] = {{"kW", 1e3}};
template <>
inline constexpr NameUnit name_units<Current>[] = {{"A"}};
template <>
inline constexpr NameUnit name_units<Voltage>[] = {{"V"}};
template <>
inline constexpr NameUnit name_units<Temperature>[] = {
    {"degC", 1, factor::celsius_zero}, {"degF", factor::kelvin_per_fahrenheit, factor::fahrenheit_zero}};

/// Gives a field the unit that its name ends in; a name without one of the quantity's does not compile.
template <class Quantity>
constexpr void take_unit_from_name(Field& field) {
    for (const NameUnit& unit : name_units<Quantity>) {
        const std::string_view name = field.name;
        const bool ends = name.ends_with(unit.name);
        if (!ends || (name.size() > unit.name.size() && name[name.size() - unit.name.size() - 1] != '_'))
            continue;
        field.factor = unit.factor;
        field.zero = unit.zero;
        return;
    }
    throw std::logic_error("the name of the field does not end in a unit of its quantity");
}

template <class Unit>
struct FieldOf<Sourced<units::quantity<Unit>>> {
    using Quantity = units::quantity<Unit>;
    static constexpr Kind kind = Kind::sourced;
    static constexpr void complete(Field& field) { take_unit_from_name<Quantity>(field); }
    static bool fill(const Entry& entry, const Field& field, Sourced<Quantity>& to) {
        auto found = sourced_number(entry, field);
        if (found)
            to = {in_si<Quantity>(si_of(found->value, field)), std::move(found->source)};
        return found.has_value();
    }
};
template <class Unit>
struct FieldOf<Sourced<std::pair<units::quantity<Unit>, units::quantity<Unit>>>> {
    using Quantity = units::quantity<Unit>;
    static constexpr Kind kind = Kind::sourced_range;
    static constexpr void complete(Field& field) { take_unit_from_name<Quantity>(field); }
    static bool fill(const Entry& entry, const Field& field, Sourced<std::pair<Quantity, Quantity>>& to) {
        auto found = sourced_range(entry, field);
        if (found)
            to = {{in_si<Quantity>(si_of(found->value.first, field)),
                   in_si<Quantity>(si_of(found->value.second, field))},
                  std::move(found->source)};
        return found.has_value();
    }
};
template <>
struct FieldOf<SourcedNumber> {
    static constexpr Kind kind = Kind::sourced;
    static bool fill(const Entry& entry, const Field& field, SourcedNumber& to);
};
template <>
struct FieldOf<SourcedRange> {
    static constexpr Kind kind = Kind::sourced_range;
    static bool fill(const Entry& entry, const Field& field, SourcedRange& to);
};
template <>
struct FieldOf<std::vector<std::pair<std::string, SourcedNumber>>> {
    static constexpr Kind kind = Kind::sourced;
    static constexpr Shape shape = Shape::named;
    static bool fill(const Entry& entry, const Field& field,
                     std::vector<std::pair<std::string, SourcedNumber>>& to);
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

/// Reads the values of one row by the names of its fields, against the bibliography given.
class SourcedReader {
  public:
    SourcedReader(const Entry& row, const Bibliography& sources) : row_(row) {
        row.reading().sources = &sources;
    }

    std::optional<SourcedNumber> number(std::string_view field) const {
        return sourced_number(row_, row_.field(field));
    }
    /// The same, each number times a factor, as a quantity.
    template <class Quantity>
    std::optional<Sourced<Quantity>> quantity(std::string_view field, double factor) const {
        const auto found = number(field);
        if (!found)
            return std::nullopt;
        return Sourced<Quantity>{in_si<Quantity>(found->value * factor), found->source};
    }
    std::optional<SourcedRange> range(std::string_view field) const {
        return sourced_range(row_, row_.field(field));
    }
    std::string source_key(std::string_view field) const {
        return ringfill::source_key(row_, row_.field(field));
    }
    std::vector<std::pair<std::string, SourcedNumber>> named(std::string_view field) const {
        return sourced_named(row_, row_.field(field));
    }

  private:
    const Entry& row_;
};

} // namespace ringfill
