#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

struct Document;

/// Where a figure comes from, and how it is known.
struct Source {
    std::string title;
    std::string edition;
    std::string place;
    std::string kind; ///< standard, textbook, paper, regulation, handbook, practice or own
    std::string seen; ///< read, restated or memory

    bool operator==(const Source&) const = default;
};

/// The sources by their keys.
using Bibliography = std::map<std::string, Source, std::less<>>;

/// A table's value with the key of its source.
template <class T>
struct Sourced {
    T value{};
    std::string source;
};

/// A range of them, the lower end first.
template <class T>
using SourcedRange = Sourced<std::pair<T, T>>;

/// The value under a name in a list of names with their values, such as an element's share; null: not listed.
template <class Named>
auto* value_named(Named& list, std::string_view wanted) {
    for (auto& [name, value] : list)
        if (name == wanted)
            return &value;
    return static_cast<decltype(&list.front().second)>(nullptr);
}

} // namespace ringfill
