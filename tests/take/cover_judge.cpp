#include "take/cover_judge.hpp"

#include <algorithm>
#include <limits>

namespace ringfill::testing {
namespace {

/// Walks through every combination of counts and keeps what it is told to.
template <class Keep>
void try_all(std::int64_t need, const std::vector<Offer>& packs, std::size_t next, Merit so_far,
             const Keep& keep) {
    if (next == packs.size()) {
        if (so_far.left >= 0)
            keep(so_far);
        return;
    }
    const std::int64_t most = (need + packs[next].content - 1) / packs[next].content;
    for (std::int64_t count = 0; count <= most; ++count) {
        Merit with = so_far;
        with.cost += count * packs[next].price.value_or(0);
        with.left += count * packs[next].content;
        with.packs += count;
        try_all(need, packs, next + 1, with, keep);
    }
}

} // namespace

bool all_priced(const std::vector<Offer>& packs) {
    return std::all_of(packs.begin(), packs.end(), [](const Offer& pack) { return pack.price.has_value(); });
}

std::optional<Merit> best_by_trying(std::int64_t need, const std::vector<Offer>& packs, std::int64_t most) {
    std::int64_t combinations = 1;
    for (const Offer& pack : packs)
        combinations *= (need + pack.content - 1) / pack.content + 1;
    if (combinations > most)
        return std::nullopt;
    const bool priced = all_priced(packs);
    std::int64_t fewest = std::numeric_limits<std::int64_t>::max();
    const Merit nothing{0, -need, 0};
    try_all(need, packs, 0, nothing, [&](const Merit& merit) { fewest = std::min(fewest, merit.packs); });
    std::optional<Merit> best;
    try_all(need, packs, 0, nothing, [&](Merit merit) {
        if (!priced && merit.packs > fewest + 1)
            return;
        if (!priced)
            merit.cost = 0;
        if (!best || merit < *best)
            best = merit;
    });
    return best;
}

Merit best_by_amounts(std::int64_t need, const std::vector<Offer>& packs) {
    const bool priced = all_priced(packs);
    std::int64_t largest = 0;
    for (const Offer& pack : packs)
        largest = std::max(largest, pack.content);
    // Any amount of need + largest or more holds a pack too many.
    using Cell = std::optional<std::pair<std::int64_t, std::int64_t>>; // cost, packs
    std::vector<Cell> best(static_cast<std::size_t>(need + largest));
    best[0] = {0, 0};
    for (std::int64_t amount = 1; amount < need + largest; ++amount)
        for (const Offer& pack : packs)
            if (pack.content <= amount)
                if (const Cell& before = best[static_cast<std::size_t>(amount - pack.content)]) {
                    const std::pair with{before->first + (priced ? *pack.price : 0), before->second + 1};
                    if (Cell& here = best[static_cast<std::size_t>(amount)]; !here || with < *here)
                        here = with;
                }
    std::int64_t fewest = std::numeric_limits<std::int64_t>::max();
    for (std::int64_t amount = need; amount < need + largest; ++amount)
        if (const Cell& cell = best[static_cast<std::size_t>(amount)])
            fewest = std::min(fewest, cell->second);
    std::optional<Merit> found;
    for (std::int64_t amount = need; amount < need + largest; ++amount)
        if (const Cell& cell = best[static_cast<std::size_t>(amount)];
            cell && (priced || cell->second <= fewest + 1))
            if (const Merit merit{cell->first, amount - need, cell->second}; !found || merit < *found)
                found = merit;
    return found.value();
}

Merit merit_of(const Cover& cover, std::int64_t need, const std::vector<Offer>& packs) {
    Merit merit{0, -need, 0};
    for (std::size_t i = 0; i < packs.size(); ++i) {
        merit.cost += all_priced(packs) ? cover.counts[i] * *packs[i].price : 0;
        merit.left += cover.counts[i] * packs[i].content;
        merit.packs += cover.counts[i];
    }
    return merit;
}

} // namespace ringfill::testing
