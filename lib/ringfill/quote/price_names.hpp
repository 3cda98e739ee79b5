#pragma once

#include <string_view>
#include <vector>

#include <ringfill/job/prices.hpp>
#include <ringfill/take/need.hpp>

namespace ringfill {

// A price of prices.packs stands under a user's words. They are held against what a need and its pack are,
// kind, substance, size and pack, part by part, and never against a sentence that is printed.

/// A need, or one of its packs.
struct Bought {
    const Need& need;
    const PackCount* pack = nullptr; ///< null: the need comes without
};

/// Everything that is bought for a need: its packs, or itself.
std::vector<Bought> bought(const Need& need);

/// "wire steel/ER70S-6 1.0 mm, 5 kg spool": by its full name in the user's units.
std::string full_name(const Bought& thing, UnitSystem units);

/// Whether a name names anything that is bought for a need: the name's words stand in what it is called in
/// the user's units, whole and one after another; blanks and commas part words. A size may be written in any
/// unit: it is the same where it is as large, so that "0.047 in" is not 1.2 mm. A substance is named whole or
/// not at all, so that "T Fe1" is not "T Fe1 bare", and what a thing only serves does not name it.
bool names_any_of(std::string_view name, const Need& need, UnitSystem units);

using NamedPrice = NamedPrices::value_type;

/// The price of a thing: of the names that name it the one with the most words, of these one with its very
/// size, of these the longest; null when there is none.
const NamedPrice* price_by_name(const NamedPrices& prices, const Bought& thing, UnitSystem units);

/// Whether a need comes among the materials: what is used up, and a tool that has a price.
bool is_material(const Need& need, const NamedPrices& prices, UnitSystem units);

} // namespace ringfill
