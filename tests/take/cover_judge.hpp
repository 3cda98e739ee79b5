#pragma once

#include <cstdint>
#include <optional>
#include <tuple>
#include <vector>

#include <ringfill/take/cover.hpp>

namespace ringfill::testing {

/// What a cover is judged by, in the order of section 12: with prices cost, left over, packs; without, left
/// over and packs (the cost is 0), among covers of at most one pack more than the fewest.
struct Merit {
    std::int64_t cost = 0;
    std::int64_t left = 0;
    std::int64_t packs = 0;

    bool operator==(const Merit&) const = default;
    auto operator<=>(const Merit&) const = default;
};

/// The best cover by trying every number of every pack, up to what that pack alone would need. Nothing when
/// there are more than `most` combinations.
std::optional<Merit> best_by_trying(std::int64_t need, const std::vector<Offer>& packs, std::int64_t most);

/// The best cover by plain dynamic programming over every amount from 0 on: slow, but simple.
Merit best_by_amounts(std::int64_t need, const std::vector<Offer>& packs);

/// The merit of a cover as it was found; its sums are worked out anew from its counts.
Merit merit_of(const Cover& cover, std::int64_t need, const std::vector<Offer>& packs);

bool all_priced(const std::vector<Offer>& packs);

} // namespace ringfill::testing
