#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/material/family.hpp>

namespace ringfill::testing {

/// What a standard allows of an element, percent by mass; where it prints a maximum only, from 0.
struct ElementLimit {
    std::string element;
    double low = 0;
    double high = 0;
};

/// The limits of one grade or filler, typed from its standard apart from the tables.
struct GradeLimits {
    std::string standard;
    std::string name;  ///< family/name
    std::string known; ///< read, restated or memory
    std::vector<ElementLimit> elements;
};

/// One row as it stands in a test: "C 0.38 0.43, Si 0.15 0.35".
struct LimitRow {
    const char* standard;
    const char* name;
    const char* known;
    const char* limits;
};

std::vector<GradeLimits> steel_limits();
std::vector<GradeLimits> other_base_limits();
std::vector<GradeLimits> filler_limits();
std::vector<GradeLimits> hardfacing_limits();

/// Reads one row's limits.
std::vector<ElementLimit> parse_limits(std::string_view text);

template <std::size_t N>
std::vector<GradeLimits> limits_of(const LimitRow (&rows)[N]) {
    std::vector<GradeLimits> all;
    for (const LimitRow& row : rows)
        all.push_back({row.standard, row.name, row.known, parse_limits(row.limits)});
    return all;
}

/// What the tables say of one metal or filler.
struct Stated {
    std::string name; ///< family/name
    const Composition* limits;
    const Composition* least; ///< null for a filler
    const Composition* typical;
};

/// Every base metal and filler of the product.
std::vector<Stated> all_stated();

/// The limits of every standard in these tests.
const std::vector<GradeLimits>& all_limits();

/// Holds all grades of one standard against their limits; how many there were.
std::size_t judge(const std::string& standard);

} // namespace ringfill::testing
