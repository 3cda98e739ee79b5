#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace ringfill {

/// A size something is sold in, in whole small units (grams, litres, pieces).
struct PackSize {
    std::int64_t content;              ///< at least 1
    std::optional<std::int64_t> price; ///< in whole small units of money
};

/// How many of each pack to take.
struct Cover {
    std::vector<std::int64_t> counts; ///< beside the pack sizes
    std::int64_t supplied;
    std::int64_t packs;
};

/// The price of a pack in whole ten-thousandths of money; one past all reason is held at 10^8 of money.
std::int64_t pack_price(double money);

/// The best packs for a need. If every pack has a price: least cost, then least left over, then fewest packs.
/// Otherwise (a need priced in part counts as unpriced): among the covers of at most one pack more than the
/// fewest, the least left over, then the fewest packs. Exact; with prices and a need of more than some four
/// million smallest common units, exact for the last four million of them and the cheapest pack before. A
/// need of 0 or less, or no packs, gives an empty cover. Throws std::logic_error for a content under 1.
Cover cover(std::int64_t need, const std::vector<PackSize>& packs);

} // namespace ringfill
