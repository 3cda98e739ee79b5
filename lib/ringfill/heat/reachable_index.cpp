#include <ringfill/heat/reachable_index.hpp>

#include <algorithm>
#include <utility>
#include <vector>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/algorithm/stable_sort.hpp>

namespace ringfill {
namespace {

double weight_in(LinearIndex index, std::string_view element) {
    const auto found = ranges::find(index, element, &IndexWeight::element);
    return found == index.end() ? 0 : found->weight;
}

/// An element that may be raised, and what that brings for what it costs under the cap.
struct Raise {
    double* share;
    double most_more;
    double cost;
    double worth;
    std::ptrdiff_t place; ///< in the order of equals
};

} // namespace

double index_of(LinearIndex index, const Shares& shares) {
    double sum = 0;
    for (const auto& [element, weight] : index)
        sum += weight * share_of(shares, element);
    return sum;
}

Shares reaching(LinearIndex index, const CompositionLimits& limits) {
    Shares reached = limits.certified;
    std::vector<std::pair<std::size_t, double>> open; // place in `reached`, and its most
    for (const auto& [element, most] : limits.most) {
        if (value_named(limits.certified, element))
            continue;
        const bool costs = limits.cap_pct && weight_in(ce_iiw_index, element) > 0;
        const double least = std::min(share_of(limits.least, element), most);
        if (costs)
            open.emplace_back(reached.size(), most);
        reached.emplace_back(element, costs ? least : most);
    }
    if (!limits.cap_pct)
        return reached;
    double room = std::max(0.0, *limits.cap_pct - index_of(ce_iiw_index, reached));
    std::vector<Raise> raises;
    for (const auto& [place, most] : open) {
        auto& [element, share] = reached[place];
        const double cost = weight_in(ce_iiw_index, element);
        const auto rank = ranges::find(ce_iiw_index, element, &IndexWeight::element);
        raises.push_back(
            {&share, most - share, cost, weight_in(index, element) / cost, rank - std::begin(ce_iiw_index)});
    }
    ranges::stable_sort(raises, [](const Raise& a, const Raise& b) {
        return a.worth != b.worth ? a.worth > b.worth : a.place < b.place;
    });
    for (const Raise& raise : raises) {
        const double more = std::min(raise.most_more, room / raise.cost);
        *raise.share += more;
        room = std::max(0.0, room - more * raise.cost);
    }
    return reached;
}

} // namespace ringfill
