#include <catch2/catch.hpp>

#include <cmath>
#include <random>

#include <ringfill/heat/reachable_index.hpp>

using namespace ringfill;
using Catch::WithinAbs;

namespace {

double weight(LinearIndex index, const std::string& element) {
    for (const auto& [name, value] : index)
        if (name == element)
            return value;
    return 0;
}

/// An element that is free between its ends.
struct Free {
    double index;
    double ce;
    double least;
    double most;
};

/// The most of an index by all vertices of the polytope: every element at its least or its most but one,
/// which stands where the cap lets it. An independent way; no order of elements is in it.
double most_by_vertices(LinearIndex index, const CompositionLimits& limits) {
    std::vector<Free> open;
    double fixed_index = 0;
    double fixed_ce = 0;
    const auto fix = [&](const std::string& element, double share) {
        fixed_index += weight(index, element) * share;
        fixed_ce += weight(ce_iiw_index, element) * share;
    };
    for (const auto& [element, share] : limits.certified)
        fix(element, share);
    for (const auto& [element, most] : limits.most) {
        if (value_named(limits.certified, element))
            continue;
        if (weight(ce_iiw_index, element) > 0)
            open.push_back({weight(index, element), weight(ce_iiw_index, element),
                            share_of(limits.least, element), most});
        else
            fix(element, most);
    }
    double least_ce = fixed_ce;
    for (const Free& one : open)
        least_ce += one.ce * one.least;
    const double cap = std::max(*limits.cap_pct, least_ce);
    double best = -1;
    for (std::size_t corner = 0; corner < (std::size_t{1} << open.size()); ++corner) {
        double value = fixed_index;
        double ce = fixed_ce;
        for (std::size_t i = 0; i < open.size(); ++i) {
            const double share = (corner >> i & 1) != 0 ? open[i].most : open[i].least;
            value += open[i].index * share;
            ce += open[i].ce * share;
        }
        if (ce <= cap + 1e-12)
            best = std::max(best, value);
        for (std::size_t i = 0; i < open.size(); ++i) { // one of those at their most comes down to the cap
            const Free& one = open[i];
            const double down = (ce - cap) / one.ce;
            if ((corner >> i & 1) != 0 && down > 0 && one.most - down >= one.least - 1e-12)
                best = std::max(best, value - one.index * down);
        }
    }
    return best;
}

} // namespace

// The largest index under a cap is a linear program with one row beside the bounds.
TEST_CASE("the composition that is reached has the largest index of all vertices, 10,000 times") {
    std::mt19937_64 random(4711);
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    const LinearIndex indices[] = {cet_index, pcm_index, chemical_carbon_index, ce_iiw_index};
    for (int i = 0; i < 10'000; ++i) {
        CompositionLimits limits;
        limits.most = {{"C", between(0.1, 0.3)},  {"Si", between(0.2, 0.8)}, {"Mn", between(0.6, 1.9)},
                       {"Cr", between(0, 0.5)},   {"Ni", between(0, 0.6)},   {"Mo", between(0, 0.2)},
                       {"Cu", between(0.1, 0.6)}, {"V", between(0, 0.1)},    {"B", between(0, 0.005)}};
        for (const auto& [element, most] : limits.most) {
            if (between(0, 1) < 0.3)
                limits.least.emplace_back(element, between(0, most));
            if (between(0, 1) < 0.2)
                limits.certified.emplace_back(element, between(0, 1.2 * most));
        }
        limits.cap_pct = between(0.2, 0.7);
        const LinearIndex index = indices[i % 4];
        const double reached = index_of(index, reaching(index, limits));
        const double most = most_by_vertices(index, limits);
        if (std::abs(reached - most) > 1e-9)
            FAIL("case " << i << ": " << reached << " against " << most);
    }
    SUCCEED("all agree");
}

TEST_CASE(
    "a certified element is spent first, even past the cap, and what costs nothing stands at its most") {
    const CompositionLimits limits{
        {{"C", 0.4}, {"Mn", 1.0}}, {}, {{"C", 0.2}, {"Mn", 1.6}, {"Si", 0.6}, {"Cr", 0.3}}, 0.45};
    const Shares reached = reaching(cet_index, limits);
    CHECK_THAT(share_of(reached, "C"), WithinAbs(0.4, 1e-12));
    CHECK_THAT(share_of(reached, "Mn"), WithinAbs(1.0, 1e-12));
    CHECK_THAT(share_of(reached, "Cr"), WithinAbs(0, 1e-12)); // no room is left
    CHECK_THAT(share_of(reached, "Si"), WithinAbs(0.6, 1e-12));
}
