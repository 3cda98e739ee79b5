#include <ringfill/take/offers.hpp>

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>
#include <utility>

#include <fmt/format.h>

#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double rounding = 1e-6; // of a whole number

std::int64_t total(const Cover& packs, const std::vector<Offer>& offers, std::int64_t Offer::*figure) {
    const auto of_packs = [&](std::int64_t count, const Offer& offer) { return count * offer.*figure; };
    return std::inner_product(packs.counts.begin(), packs.counts.end(), offers.begin(), std::int64_t{0},
                              std::plus(), of_packs);
}

} // namespace

std::vector<Offer> cylinders_of(const std::vector<GasPack>& packs) {
    std::vector<Offer> offers;
    for (const GasPack& pack : packs)
        offers.push_back({pack.name, whole_down(litres(pack.usable()))});
    return offers;
}

std::int64_t whole_down(double value) {
    return std::max<std::int64_t>(1, std::llround(std::floor(value + rounding)));
}

std::int64_t whole_up(double value) {
    constexpr double most = 1e15;
    return std::llround(std::min(most, std::ceil(value - rounding)));
}

Cover cover_by(std::int64_t need, const std::vector<Offer>& offers, std::int64_t Offer::*figure) {
    std::vector<PackSize> sizes;
    for (const Offer& offer : offers)
        sizes.push_back({offer.*figure, offer.price});
    Cover packs = cover(need, sizes);
    packs.supplied = total(packs, offers, &Offer::content);
    return packs;
}

Cover enough_for_both(const Cover& for_need, std::int64_t need, std::int64_t flow,
                      const std::vector<Offer>& offers) {
    const std::int64_t missing = flow - total(for_need, offers, &Offer::draw);
    if (missing <= 0)
        return for_need;
    Cover both = cover_by(missing, offers, &Offer::draw);
    for (std::size_t i = 0; i < offers.size(); ++i)
        both.counts[i] += for_need.counts[i];
    both.packs += for_need.packs;
    both.supplied += for_need.supplied;
    const Cover for_flow = cover_by(flow, offers, &Offer::draw);
    const bool fewer = std::pair(for_flow.packs, for_flow.supplied) < std::pair(both.packs, both.supplied);
    return for_flow.supplied >= need && fewer ? for_flow : both;
}

MassFlow steady_draw(const Cover& packs, const std::vector<Offer>& offers) {
    return in_si<MassFlow>(static_cast<double>(total(packs, offers, &Offer::draw)) / grams / factor::hour);
}

bool is_offered(Need& line, const std::vector<Offer>& offers, std::string_view what) {
    line.pack_known = !offers.empty();
    if (!line.pack_known)
        line.why += fmt::format("; no {} is in the table of packs", what);
    return line.pack_known;
}

std::int64_t whole_amount(const Need& line, double unit) {
    return whole_up((line.need + line.reserve) * unit);
}

void load(Need& line, const Cover& packs, const std::vector<Offer>& offers, double unit) {
    std::vector<double> counts;
    std::vector<double> contents;
    for (std::size_t i = 0; i < offers.size(); ++i) {
        if (packs.counts[i] > 0)
            line.cover.push_back({offers[i].name, packs.counts[i], offers[i].filler_kg});
        counts.push_back(static_cast<double>(packs.counts[i]));
        contents.push_back(static_cast<double>(offers[i].content) / unit);
    }
    line.supplied = static_cast<double>(packs.supplied) / unit;
    work_supply(line, "sum(n*c)", {{"n", std::move(counts)}, {"c", std::move(contents), unit_of(line.kind)}});
}

void load_best(Need& line, const std::vector<Offer>& offers, double unit, std::string_view what) {
    if (is_offered(line, offers, what))
        load(line, cover_by(whole_amount(line, unit), offers, &Offer::content), offers, unit);
}

} // namespace ringfill
