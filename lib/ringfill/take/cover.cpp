#include <ringfill/take/cover.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <stdexcept>
#include <tuple>
#include <utility>

#include <range/v3/algorithm/all_of.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

namespace ringfill {
namespace {

constexpr std::int64_t most_cells = 4'000'000;
constexpr std::int32_t unreachable = std::numeric_limits<std::int32_t>::max();

/// The need and the packs (at least one) divided by the common divisor of the contents, the need rounded up.
struct Reduced {
    std::int64_t need;
    std::vector<std::int64_t> contents;
    std::int64_t largest;
};

Reduced reduce(std::int64_t need, const std::vector<PackSize>& packs) {
    std::int64_t unit = packs.front().content;
    for (const PackSize& pack : packs) {
        if (pack.content < 1)
            throw std::logic_error("a pack holds nothing");
        unit = std::gcd(unit, pack.content);
    }
    auto contents = packs |
                    ranges::views::transform([unit](const PackSize& pack) { return pack.content / unit; }) |
                    ranges::to<std::vector>();
    const std::int64_t largest = *std::max_element(contents.begin(), contents.end());
    return {(need + unit - 1) / unit, std::move(contents), largest};
}

Cover counted(std::vector<std::int64_t> counts, const std::vector<PackSize>& packs) {
    Cover result{std::move(counts), 0, 0};
    for (std::size_t i = 0; i < packs.size(); ++i) {
        result.supplied += result.counts[i] * packs[i].content;
        result.packs += result.counts[i];
    }
    return result;
}

/// What smaller packs put in the place of largest ones take away: for each shortfall the fewest smaller packs
/// that make it, and one of them.
struct Shortfalls {
    std::vector<std::int32_t> fewest;
    std::vector<std::uint32_t> last_pack;
};

Shortfalls shortfalls(const Reduced& reduced, std::int64_t most) {
    const auto size = static_cast<std::size_t>(most) + 1;
    Shortfalls table{std::vector<std::int32_t>(size, unreachable), std::vector<std::uint32_t>(size)};
    table.fewest[0] = 0;
    for (std::size_t i = 0; i < reduced.contents.size(); ++i) {
        const std::int64_t step = reduced.largest - reduced.contents[i];
        for (std::int64_t s = step; step > 0 && s <= most; ++s) {
            const std::int32_t before = table.fewest[static_cast<std::size_t>(s - step)];
            if (before != unreachable && before + 1 < table.fewest[static_cast<std::size_t>(s)]) {
                table.fewest[static_cast<std::size_t>(s)] = before + 1;
                table.last_pack[static_cast<std::size_t>(s)] = static_cast<std::uint32_t>(i);
            }
        }
    }
    return table;
}

/// Without prices. With n packs the supply is n × largest less a shortfall, so the search is over shortfalls
/// of at most twice the largest pack, however large the need.
std::vector<std::int64_t> least_left_over(const Reduced& reduced) {
    const std::int64_t fewest = (reduced.need + reduced.largest - 1) / reduced.largest;
    const Shortfalls table = shortfalls(reduced, (fewest + 1) * reduced.largest - reduced.need);
    std::int64_t best_left = std::numeric_limits<std::int64_t>::max();
    std::int64_t best_shortfall = 0;
    std::int64_t best_packs = fewest;
    for (const std::int64_t n : {fewest, fewest + 1})
        for (std::int64_t s = n * reduced.largest - reduced.need; s >= 0; --s)
            if (table.fewest[static_cast<std::size_t>(s)] <= n) {
                if (const std::int64_t left = n * reduced.largest - s - reduced.need; left < best_left)
                    std::tie(best_left, best_shortfall, best_packs) = std::tie(left, s, n);
                break;
            }
    std::vector<std::int64_t> counts(reduced.contents.size(), 0);
    std::int64_t smaller = 0;
    for (std::int64_t s = best_shortfall; s > 0; ++smaller) {
        const std::size_t pack = table.last_pack[static_cast<std::size_t>(s)];
        ++counts[pack];
        s -= reduced.largest - reduced.contents[pack];
    }
    const auto largest = std::find(reduced.contents.begin(), reduced.contents.end(), reduced.largest);
    counts[static_cast<std::size_t>(largest - reduced.contents.begin())] += best_packs - smaller;
    return counts;
}

/// Holds a price times a content without overflow.
__extension__ using Wide = __int128;

/// The pack of the lowest price for its content; of equals the largest.
std::size_t cheapest(const Reduced& reduced, const std::vector<PackSize>& packs) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < packs.size(); ++i) {
        const auto left = static_cast<Wide>(*packs[i].price) * reduced.contents[best];
        const auto right = static_cast<Wide>(*packs[best].price) * reduced.contents[i];
        if (left < right || (left == right && reduced.contents[i] > reduced.contents[best]))
            best = i;
    }
    return best;
}

/// Cheapest packs for each exact amount: cost, then number of packs.
struct Costs {
    std::vector<std::int64_t> cost;
    std::vector<std::int32_t> packs;
    std::vector<std::uint8_t> last_pack;
};

Costs costs(const Reduced& reduced, const std::vector<PackSize>& packs, std::int64_t most) {
    const auto size = static_cast<std::size_t>(most) + 1;
    Costs table{std::vector<std::int64_t>(size), std::vector<std::int32_t>(size, unreachable),
                std::vector<std::uint8_t>(size)};
    table.packs[0] = 0;
    for (std::size_t amount = 1; amount < size; ++amount)
        for (std::size_t i = 0; i < packs.size(); ++i) {
            const auto content = static_cast<std::size_t>(reduced.contents[i]);
            if (content > amount || table.packs[amount - content] == unreachable)
                continue;
            const std::int64_t cost = table.cost[amount - content] + *packs[i].price;
            const std::int32_t count = table.packs[amount - content] + 1;
            if (table.packs[amount] == unreachable ||
                std::tie(cost, count) < std::tie(table.cost[amount], table.packs[amount])) {
                table.cost[amount] = cost;
                table.packs[amount] = count;
                table.last_pack[amount] = static_cast<std::uint8_t>(i);
            }
        }
    return table;
}

/// With prices. Fewer than c other packs stand beside the cheapest one of content c in some best cover (of c
/// others a part sums to a multiple of c, and the cheapest pack does that no worse), so a large need starts
/// with it.
std::vector<std::int64_t> least_cost(Reduced reduced, const std::vector<PackSize>& packs) {
    const std::size_t best = cheapest(reduced, packs);
    const std::int64_t c = reduced.contents[best];
    const std::int64_t searched = std::min(c * reduced.largest, most_cells);
    const std::int64_t first = std::max<std::int64_t>(0, (reduced.need - searched) / c);
    reduced.need -= first * c;
    const Costs table = costs(reduced, packs, reduced.need + reduced.largest);
    auto amount = static_cast<std::size_t>(reduced.need);
    for (std::size_t a = amount; a < table.packs.size(); ++a)
        if (table.packs[a] != unreachable &&
            (table.packs[amount] == unreachable || table.cost[a] < table.cost[amount]))
            amount = a;
    std::vector<std::int64_t> counts(packs.size(), 0);
    counts[best] = first;
    while (amount > 0) {
        const std::size_t pack = table.last_pack[amount];
        ++counts[pack];
        amount -= static_cast<std::size_t>(reduced.contents[pack]);
    }
    return counts;
}

} // namespace

std::int64_t whole_need(double need, double rounding) {
    constexpr double most = 1e15;
    return std::llround(std::min(most, std::ceil(need - rounding)));
}

std::int64_t pack_price(double money) {
    constexpr double units = 1e4;
    constexpr double most = 1e12; // four million of them can be added up
    return std::llround(std::min(most, money * units));
}

Cover cover(std::int64_t need, const std::vector<PackSize>& packs) {
    if (need <= 0 || packs.empty())
        return counted(std::vector<std::int64_t>(packs.size(), 0), packs);
    const Reduced reduced = reduce(need, packs);
    const bool priced =
        packs.size() < 256 && ranges::all_of(packs, [](const PackSize& p) { return p.price.has_value(); });
    return counted(priced ? least_cost(reduced, packs) : least_left_over(reduced), packs);
}

} // namespace ringfill
