#include <ringfill/take/offers.hpp>

#include <algorithm>
#include <cmath>
#include <functional>
#include <utility>

#include <fmt/format.h>

#include <ringfill/take/group.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double rounding = 1e-6; // of a whole number

} // namespace

std::vector<Offer> cylinders_of(const std::vector<GasPack>& packs) {
    std::vector<Offer> offers;
    for (const GasPack& pack : packs)
        offers.push_back({.content = whole_down(litres(pack.usable())), .name = pack.name});
    return offers;
}

std::int64_t whole_down(double value) {
    return std::max<std::int64_t>(1, std::llround(std::floor(value + rounding)));
}

std::int64_t whole_up(double value) {
    constexpr double most = 1e15;
    return std::llround(std::min(most, std::ceil(value - rounding)));
}

Cover enough_for_both(const Cover& for_need, std::int64_t need, std::int64_t flow,
                      const std::vector<Offer>& offers) {
    const std::int64_t missing = flow - total(for_need, offers, &Offer::draw);
    if (missing <= 0)
        return for_need;
    Cover both = cover(missing, offers, &Offer::draw);
    for (std::size_t i = 0; i < offers.size(); ++i)
        both.counts[i] += for_need.counts[i];
    both.packs += for_need.packs;
    both.supplied += for_need.supplied;
    const Cover for_flow = cover(flow, offers, &Offer::draw);
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

std::vector<PackCount> packs_of(const Cover& packs, const std::vector<Offer>& offers) {
    std::vector<PackCount> taken;
    for (std::size_t i = 0; i < offers.size(); ++i)
        if (packs.counts[i] > 0)
            taken.push_back({offers[i].name, packs.counts[i], offers[i].filler_kg});
    return taken;
}

void load(Need& line, const Cover& packs, const std::vector<Offer>& offers, double unit) {
    const auto content_of = [&](const Offer& offer) { return static_cast<double>(offer.content) / unit; };
    line.cover = packs_of(packs, offers);
    line.supplied = static_cast<double>(packs.supplied) / unit;
    work_supply(line, "sum(n*c)",
                {{"n", each(packs.counts, std::identity())},
                 {"c", each(offers, content_of), std::string(line.kind.unit)}});
}

void load_best(Need& line, const std::vector<Offer>& offers, double unit, std::string_view what) {
    if (is_offered(line, offers, what))
        load(line, cover(whole_amount(line, unit), offers), offers, unit);
}

} // namespace ringfill
