#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <fmt/format.h>

#include <ringfill/table/replaced.hpp>

// What two rows are compared by, for lowered_figures().

namespace ringfill {

/// Which way a figure is the more careful one: higher, lower, left as it is, set or not set.
enum class Safer { high, low, unchanged, set, unset };

inline constexpr std::string_view maximum_words = "maximum between rings";

/// The number of a figure with its source; of a range the upper end.
std::optional<double> number_of(const Value* value);
/// A number, or null for none.
Value as_value(const std::optional<double>& number);

/// Whether one figure is less careful than the one it takes the place of.
/// @param none_is_safe a row without the figure is the more careful one
bool is_less_careful(const std::optional<double>& ours, const std::optional<double>& theirs, Safer safer,
                     bool none_is_safe);

/// What is compared: where it stands, and what is found.
struct Comparison {
    std::string path;
    std::vector<LoweredFigure>* found;

    Comparison at(std::string_view name) const {
        return {path.empty() ? std::string(name) : fmt::format("{}.{}", path, name), found};
    }
    void add(std::string_view words, std::string_view unit, Value ours, Value theirs) const {
        found->push_back({path, words, unit, std::move(ours), std::move(theirs)});
    }
};

/// Compares lists of steps (preheat, maximum between rings, carbon equivalent) by the name of the field that
/// holds them, at each thickness, carbon and strength where they may differ; the greatest difference of a
/// figure is told. False: it is no such list.
bool compare_steps(const Comparison& at, std::string_view name, const Value* ours, const Value* theirs);

} // namespace ringfill
