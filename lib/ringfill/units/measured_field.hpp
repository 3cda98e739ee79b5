#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/document/entry.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// A field's quantity in the SI unit of its kind: as written, or the field's fallback when absent (then it is
/// noted as assumed). Nothing when absent without fallback, or when faulty (then the fault is noted).
std::optional<double> measured_si(const Entry& entry, std::string_view name);

/// The same as a typed quantity.
template <class Quantity>
std::optional<Quantity> measured(const Entry& entry, std::string_view name) {
    const auto value = measured_si(entry, name);
    return value ? std::optional(in_si<Quantity>(*value)) : std::nullopt;
}

/// The quantities of a list field in SI; faulty elements are noted and left out.
std::vector<double> measured_list_si(const Entry& entry, std::string_view name);

template <class Quantity>
std::vector<Quantity> measured_list(const Entry& entry, std::string_view name) {
    std::vector<Quantity> list;
    for (const double value : measured_list_si(entry, name))
        list.push_back(in_si<Quantity>(value));
    return list;
}

/// The range of a field in words, in the unit that its kind is told in: "over 0 mm and at most 10000 mm";
/// empty for a kind without numbers.
std::string range_in_words(const Field& field);

} // namespace ringfill
