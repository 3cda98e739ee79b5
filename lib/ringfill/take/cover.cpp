#include <ringfill/take/cover.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <stdexcept>
#include <tuple>
#include <utility>

#include <range/v3/algorithm/all_of.hpp>
#include <range/v3/algorithm/find.hpp>
#include <range/v3/algorithm/max.hpp>
#include <range/v3/algorithm/min.hpp>
#include <range/v3/numeric/accumulate.hpp>
#include <range/v3/numeric/inner_product.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

namespace ringfill {
namespace {

constexpr std::int64_t most_cells = 4'000'000;

/// The need and the packs (at least one) divided by the common divisor of their figure, the need rounded up.
struct Reduced {
    std::int64_t need;
    std::vector<std::int64_t> contents;
    std::int64_t largest;
};

Reduced reduce(std::int64_t need, const std::vector<Offer>& packs, std::int64_t Offer::*figure) {
    auto contents = packs | ranges::views::transform(figure) | ranges::to<std::vector>();
    if (ranges::min(contents) < 1)
        throw std::logic_error("a pack holds nothing");
    const std::int64_t unit =
        ranges::accumulate(contents, std::int64_t{0}, std::gcd<std::int64_t, std::int64_t>);
    for (std::int64_t& content : contents)
        content /= unit;
    const std::int64_t largest = ranges::max(contents);
    return {(need + unit - 1) / unit, std::move(contents), largest};
}

/// What a pack takes away in the place of a largest one.
std::size_t step_of(const Reduced& reduced, std::size_t pack) {
    return static_cast<std::size_t>(reduced.largest - reduced.contents[pack]);
}

constexpr std::int32_t none_makes_it = std::numeric_limits<std::int32_t>::max() / 2;

/// By shortfall, the fewest smaller packs that make it, and one of them.
struct Shortfalls {
    std::vector<std::int32_t> packs;
    std::vector<std::uint32_t> last;
};

/// What so many smaller packs put in the place of largest ones take away: what one takes away, then what two
/// do, and so on. Of packs that are as few, those that stand first are taken.
Shortfalls shortfalls(const Reduced& reduced, std::size_t most, std::int64_t most_packs) {
    Shortfalls table{std::vector(most + 1, none_makes_it), std::vector<std::uint32_t>(most + 1)};
    auto& [packs, last] = table;
    packs[0] = 0;
    std::vector<std::size_t> made{0};
    for (std::size_t next = 0; next < made.size() && packs[made[next]] < most_packs; ++next)
        for (std::uint32_t i = 0; i < reduced.contents.size(); ++i) {
            const std::size_t from = made[next];
            const std::size_t to = from + step_of(reduced, i);
            if (to > most || packs[to] <= packs[from])
                continue;
            const std::uint32_t behind = std::max(i, last[from]);
            if (packs[to] == none_makes_it)
                made.push_back(to);
            last[to] = packs[to] == none_makes_it ? behind : std::min(last[to], behind);
            packs[to] = packs[from] + 1;
        }
    return table;
}

/// Without prices. With n packs the supply is n × largest less a shortfall, so the search is over shortfalls
/// of at most twice the largest pack, however large the need.
std::vector<std::int64_t> least_left_over(const Reduced& reduced) {
    const std::int64_t fewest = (reduced.need + reduced.largest - 1) / reduced.largest;
    const auto shortfall_of = [&](std::int64_t packs) {
        return static_cast<std::size_t>(packs * reduced.largest - reduced.need);
    };
    const Shortfalls table = shortfalls(reduced, shortfall_of(fewest + 1), fewest + 1);
    std::tuple best{std::numeric_limits<std::size_t>::max(), fewest, std::size_t{0}}; // least left over first
    for (const std::int64_t n : {fewest, fewest + 1}) {
        std::size_t s = shortfall_of(n);
        while (table.packs[s] > n) // 0 needs none
            --s;
        best = std::min(best, std::tuple(shortfall_of(n) - s, n, s));
    }
    auto [left, packs, shortfall] = best;
    std::vector<std::int64_t> counts(reduced.contents.size(), 0);
    const auto largest = ranges::find(reduced.contents, reduced.largest);
    counts[static_cast<std::size_t>(largest - reduced.contents.begin())] += packs - table.packs[shortfall];
    for (; shortfall > 0; shortfall -= step_of(reduced, table.last[shortfall]))
        ++counts[table.last[shortfall]];
    return counts;
}

/// Holds a price times a content without overflow.
__extension__ using Wide = __int128;

/// The pack of the lowest price for its content; of equals the largest.
std::size_t cheapest(const Reduced& reduced, const std::vector<Offer>& packs) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < packs.size(); ++i) {
        const auto left = static_cast<Wide>(*packs[i].price) * reduced.contents[best];
        const auto right = static_cast<Wide>(*packs[best].price) * reduced.contents[i];
        if (left < right || (left == right && reduced.contents[i] > reduced.contents[best]))
            best = i;
    }
    return best;
}

/// The best packs that make an exact amount: what they cost, how many they are, and one of them.
struct Made {
    std::int64_t cost = 9'000'000'000'000'000'000; ///< more than any: nothing makes the amount
    std::int32_t packs = none_makes_it;
    std::uint32_t last = 0;
};

/// The cheapest packs for each amount, of these the fewest.
std::vector<Made> costs(const Reduced& reduced, const std::vector<Offer>& packs, std::size_t most) {
    std::vector<Made> table(most + 1);
    table[0] = {0, 0};
    for (std::size_t amount = 1; amount <= most; ++amount)
        for (std::uint32_t i = 0; i < packs.size(); ++i) {
            const auto content = static_cast<std::size_t>(reduced.contents[i]);
            if (content > amount)
                continue;
            const auto& [cost, count, last] = table[amount - content];
            const Made one{cost + *packs[i].price, count + 1, i};
            if (std::tie(one.cost, one.packs) < std::tie(table[amount].cost, table[amount].packs))
                table[amount] = one;
        }
    return table;
}

/// With prices. Fewer than c other packs stand beside the cheapest one of content c in some best cover (of c
/// others a part sums to a multiple of c, and the cheapest pack does that no worse), so a large need starts
/// with it.
std::vector<std::int64_t> least_cost(Reduced reduced, const std::vector<Offer>& packs) {
    const std::size_t best = cheapest(reduced, packs);
    const std::int64_t c = reduced.contents[best];
    const std::int64_t searched = std::min(c * reduced.largest, most_cells);
    const std::int64_t first = std::max<std::int64_t>(0, (reduced.need - searched) / c);
    reduced.need -= first * c;
    auto amount = static_cast<std::size_t>(reduced.need);
    const std::vector<Made> table = costs(reduced, packs, amount + static_cast<std::size_t>(reduced.largest));
    for (std::size_t a = amount; a < table.size(); ++a)
        if (table[a].cost < table[amount].cost)
            amount = a;
    std::vector<std::int64_t> counts(packs.size(), 0);
    counts[best] = first;
    while (amount > 0) {
        const std::size_t pack = table[amount].last;
        ++counts[pack];
        amount -= static_cast<std::size_t>(reduced.contents[pack]);
    }
    return counts;
}

} // namespace

std::int64_t total(const Cover& packs, const std::vector<Offer>& offers, std::int64_t Offer::*figure) {
    return ranges::inner_product(packs.counts, offers, std::int64_t{0}, {}, {}, {}, figure);
}

std::int64_t pack_price(double money) {
    constexpr double units = 1e4;
    constexpr double most = 1e12; // four million of them can be added up
    return std::llround(std::min(most, money * units));
}

Cover cover(std::int64_t need, const std::vector<Offer>& packs, std::int64_t Offer::*figure) {
    Cover best{std::vector<std::int64_t>(packs.size(), 0), 0, 0};
    if (need <= 0 || packs.empty())
        return best;
    const Reduced reduced = reduce(need, packs, figure);
    const bool priced =
        packs.size() < 256 && ranges::all_of(packs, [](const Offer& p) { return p.price.has_value(); });
    best.counts = priced ? least_cost(reduced, packs) : least_left_over(reduced);
    best.supplied = total(best, packs, &Offer::content);
    best.packs = ranges::accumulate(best.counts, std::int64_t{0});
    return best;
}

} // namespace ringfill
