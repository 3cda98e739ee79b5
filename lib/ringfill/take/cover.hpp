#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace ringfill {

/// One kind of pack on offer, in whole small units: grams, litres or pieces, and grams an hour.
struct Offer {
    std::int64_t content = 1;               ///< at least 1
    std::optional<std::int64_t> price = {}; ///< in whole small units of money
    std::string name = {};
    std::int64_t draw = 0;                ///< of a cylinder of fuel
    std::optional<double> filler_kg = {}; ///< in one
};

/// How many of each pack to take.
struct Cover {
    std::vector<std::int64_t> counts; ///< beside the offers
    std::int64_t supplied;            ///< of content
    std::int64_t packs;
};

/// What all of them have together of one figure of what is on offer.
std::int64_t total(const Cover& packs, const std::vector<Offer>& offers, std::int64_t Offer::*figure);

/// The price of a pack in whole ten-thousandths of money; one past all reason is held at 10^8 of money.
std::int64_t pack_price(double money);

/// The best packs for a need of one figure of what is on offer. If every pack has a price: least cost, then
/// least left over, then fewest packs. Otherwise (a need priced in part counts as unpriced): among the covers
/// of at most one pack more than the fewest, the least left over, then the fewest packs. Exact; with prices
/// and a need of more than some four million smallest common units, exact for the last four million of them
/// and the cheapest pack before. A need of 0 or less, or no packs, gives an empty cover. Throws
/// std::logic_error for a figure under 1.
Cover cover(std::int64_t need, const std::vector<Offer>& packs,
            std::int64_t Offer::*figure = &Offer::content);

} // namespace ringfill
