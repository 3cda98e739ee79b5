#pragma once

#include <string_view>

#include <ringfill/job/prices.hpp>

namespace ringfill {

/// Whether the words of a name stand in a text, whole and one after another; blanks and commas part words.
bool names(std::string_view name, std::string_view text);

/// The price of what a text tells of: of the names whose words stand in it the one with the most words, of
/// these the longest; null when there is none.
const NamedPrices::value_type* price_by_name(const NamedPrices& prices, std::string_view text);

} // namespace ringfill
