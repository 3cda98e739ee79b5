#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/document/entry.hpp>
#include <ringfill/table/source.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// A table's value with the key of its source.
template <class T>
struct Sourced {
    T value{};
    std::string source;
};

/// Reads the values of one table against a bibliography: a value without a known source is noted as a fault.
class SourcedReader {
  public:
    SourcedReader(const Entry& row, const Bibliography& sources) : row_(row), sources_(sources) {}

    /// A field of the kind Kind::sourced: [number, source key].
    std::optional<Sourced<double>> number(std::string_view field) const;
    /// The same, each number times a factor, as a quantity.
    template <class Quantity>
    std::optional<Sourced<Quantity>> quantity(std::string_view field, double factor) const {
        const auto found = number(field);
        if (!found)
            return std::nullopt;
        return Sourced<Quantity>{in_si<Quantity>(found->value * factor), found->source};
    }
    /// A field of the kind Kind::sourced_range: [low, high, source key].
    std::optional<Sourced<std::pair<double, double>>> range(std::string_view field) const;
    /// A field that holds nothing but a source key; empty when absent or not known.
    std::string source_key(std::string_view field) const;
    /// A named field of values: { "C": [0.46, source key], … }.
    std::vector<std::pair<std::string, Sourced<double>>> named(std::string_view field) const;

  private:
    std::optional<Sourced<double>> one(const Value& value, const Field& field, const std::string& path) const;
    std::optional<std::string> key(const Value& value, const std::string& path) const;

    const Entry& row_;
    const Bibliography& sources_;
};

} // namespace ringfill
