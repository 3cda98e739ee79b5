#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ringfill {

/// The known name that a mistyped one most likely means, or nothing when none is near: at most a third of its
/// letters may differ, be missing, be too many or be swapped with a neighbour. Capitals do not count.
std::optional<std::string> nearest(std::string_view typed, const std::vector<std::string>& known);

/// The first names of a list, and how many more there are: "a, b and 3 more".
std::string few_of(const std::vector<std::string>& names, std::size_t most, std::string_view word = "and");

/// The remedy for an unknown name: `did you mean "stock"?` or else `known here: a, b, c`.
std::string suggest(std::string_view typed, const std::vector<std::string>& known);

} // namespace ringfill
