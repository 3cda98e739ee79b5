#include <ringfill/take/take_fuel.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <stdexcept>
#include <utility>

#include <fmt/format.h>

#include <ringfill/take/cover.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double mega = 1e6;
constexpr double grams = 1e3; // in a kilogram

/// One kind of cylinder on offer, in whole small units: grams or litres, and grams an hour.
struct Offer {
    std::string name;
    std::int64_t content;
    std::int64_t draw;
};

/// Rounded down, so that nobody counts on what is not there.
std::int64_t whole_down(double value) {
    return std::max<std::int64_t>(1, std::llround(std::floor(value + 1e-6)));
}

std::int64_t whole_up(double value) {
    return std::llround(std::ceil(value - 1e-6));
}

std::int64_t total(const Cover& packs, const std::vector<Offer>& offers, std::int64_t Offer::*figure) {
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < offers.size(); ++i)
        sum += packs.counts[i] * offers[i].*figure;
    return sum;
}

Cover cover_by(std::int64_t need, const std::vector<Offer>& offers, std::int64_t Offer::*figure) {
    std::vector<PackSize> sizes;
    for (const Offer& offer : offers)
        sizes.push_back({offer.*figure, std::nullopt});
    Cover packs = cover(need, sizes);
    packs.supplied = total(packs, offers, &Offer::content);
    return packs;
}

/// Cylinders that hold the need and give the flow. Where those for the need do not give it: the fewer of
/// those that give it, if they hold the need, and of these with others beside them; of as many the lighter.
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

MassFlow steady(const Cover& packs, const std::vector<Offer>& offers) {
    return in_si<MassFlow>(static_cast<double>(total(packs, offers, &Offer::draw)) / grams / factor::hour);
}

std::string in_words(const Cover& packs, const std::vector<Offer>& offers) {
    std::string text;
    for (std::size_t i = 0; i < offers.size(); ++i)
        if (packs.counts[i] > 0)
            text += fmt::format("{}{} × {}", text.empty() ? "" : " + ", packs.counts[i], offers[i].name);
    return text;
}

/// Fills what the packs supply. @param unit small units of a cylinder in one unit of the line.
void load(Need& line, const Cover& packs, const std::vector<Offer>& offers, double unit) {
    std::vector<double> counts;
    std::vector<double> contents;
    for (std::size_t i = 0; i < offers.size(); ++i) {
        if (packs.counts[i] > 0)
            line.cover.push_back({offers[i].name, packs.counts[i]});
        counts.push_back(static_cast<double>(packs.counts[i]));
        contents.push_back(static_cast<double>(offers[i].content) / unit);
    }
    line.supplied = static_cast<double>(packs.supplied) / unit;
    line.spare = line.supplied - line.need - line.reserve;
    work_supply(line, std::move(counts), std::move(contents));
}

Working reserve_working(const Need& line, double reserve) {
    return {"reserve",    "share*need", {{"share", reserve}, {"need", line.need, line.unit}},
            line.reserve, line.unit,    "practice"};
}

/// All that burns one fuel, a row a bore.
struct OneFuel {
    Fuel fuel;
    std::vector<std::string> bores;
    std::vector<double> counts;
    std::vector<double> heats; // MJ into the metal of one
    std::vector<double> shares;
    Power source; // the most that is given off at once
};

OneFuel& group_of(const std::string& name, std::vector<OneFuel>& groups, const Fuels& fuels) {
    for (OneFuel& known : groups)
        if (known.fuel.name == name)
            return known;
    for (const Fuel& fuel : fuels.fuels)
        if (fuel.name == name)
            return groups.emplace_back(OneFuel{fuel, {}, {}, {}, {}, {}});
    throw std::logic_error(fmt::format("no fuel is named {}", name));
}

std::vector<OneFuel> by_fuel(const std::vector<FuelUse>& uses, const Fuels& fuels) {
    std::vector<OneFuel> groups;
    for (const FuelUse& use : uses) {
        if (use.fuel.empty() || !(use.heat > Energy()))
            continue;
        if (!(use.efficiency > 0))
            throw std::logic_error("a heater gives nothing to the metal");
        OneFuel& group = group_of(use.fuel, groups, fuels);
        group.bores.push_back(use.bore);
        group.counts.push_back(use.count);
        group.heats.push_back(use.heat.value() / mega);
        group.shares.push_back(use.efficiency);
        group.source = std::max(group.source, use.source);
    }
    return groups;
}

std::string heat_in_words(const OneFuel& group) {
    const auto most = std::max_element(group.heats.begin(), group.heats.end());
    const std::string& bore = group.bores[static_cast<std::size_t>(most - group.heats.begin())];
    const double bores = std::accumulate(group.counts.begin(), group.counts.end(), 0.0);
    if (bores < 2)
        return fmt::format("{:.3g} MJ into {}", *most, bore);
    return fmt::format("{:.3g} MJ into {:.0f} bores, the most {:.3g} MJ into one of {}",
                       std::inner_product(group.counts.begin(), group.counts.end(), group.heats.begin(), 0.0),
                       bores, *most, bore);
}

std::string share_in_words(const OneFuel& group) {
    const auto [low, high] = std::minmax_element(group.shares.begin(), group.shares.end());
    return *low < *high ? fmt::format("{:.3g} to {:.3g} %", 100 * *low, 100 * *high)
                        : fmt::format("{:.3g} %", 100 * *low);
}

void load_fuel(Need& line, MassFlow flow, const Packs& packs, const std::string& holds, UnitSystem units) {
    std::vector<Offer> offers;
    for (const FuelPack& pack : packs.fuel)
        if (pack.stocked && pack.units == units && pack.holds == holds)
            offers.push_back({pack.name, whole_down(pack.usable().value() * grams),
                              whole_down(kg_h(pack.draw.value) * grams)});
    line.pack_known = !offers.empty();
    if (offers.empty()) {
        line.why += "; no cylinder of this fuel is in the table of packs";
        return;
    }
    const std::int64_t all = whole_up((line.need + line.reserve) * grams);
    const Cover for_need = cover_by(all, offers, &Offer::content);
    const Cover best = enough_for_both(for_need, all, whole_up(kg_h(flow) * grams), offers);
    if (best.counts != for_need.counts)
        line.why += fmt::format("; {} would hold it but gives only {} steadily, {} gives {}",
                                in_words(for_need, offers), show(steady(for_need, offers), units),
                                in_words(best, offers), show(steady(best, offers), units));
    load(line, best, offers, grams);
}

Need fuel_line(const OneFuel& group, double reserve, const Packs& packs, UnitSystem units) {
    const Fuel& fuel = group.fuel;
    const double net = fuel.net_J_kg.value / mega;
    Need line;
    line.item = fmt::format("fuel {}", fuel.name);
    for (std::size_t i = 0; i < group.heats.size(); ++i)
        line.need += group.counts[i] * group.heats[i] / (group.shares[i] * net);
    line.reserve = reserve * line.need;
    line.unit = "kg";
    line.source = fuel.net_J_kg.source;
    line.working = {
        {"need",
         "sum(n*q/(e*H))",
         {{"n", group.counts}, {"q", group.heats, "MJ"}, {"e", group.shares}, {"H", net, "MJ/kg"}},
         line.need,
         "kg",
         line.source},
        reserve_working(line, reserve)};
    const MassFlow flow = in_si<MassFlow>(group.source.value() / fuel.net_J_kg.value);
    line.why =
        fmt::format("{}; {} of the {:.4g} MJ/kg that {} gives reaches the metal; {:.3g} kW burns {}; on "
                    "top {:.3g} %",
                    heat_in_words(group), share_in_words(group), net, fuel.name, group.source.value() / 1e3,
                    show(flow, units), 100 * reserve);
    load_fuel(line, flow, packs, fuel.name, units);
    return line;
}

Need oxygen_line(const Fuel& fuel, double fuel_kg, double reserve, const Packs& packs, UnitSystem units) {
    const Sourced<double>& to_a_kilogram = *fuel.oxygen_m3_kg;
    const bool inch = units == UnitSystem::inch;
    Need line;
    line.item = fmt::format("oxygen for {}", fuel.name);
    line.need = litres(in_si<Volume>(to_a_kilogram.value * fuel_kg));
    line.reserve = reserve * line.need;
    line.unit = "L";
    line.source = to_a_kilogram.source;
    line.why = fmt::format("{} to a {} of {} for a neutral flame; on top {:.3g} %",
                           show(in_si<Volume>(to_a_kilogram.value * (inch ? factor::pound : 1)), units),
                           inch ? "pound" : "kilogram", fuel.name, 100 * reserve);
    line.working = {{"need",
                     "1000*v*m",
                     {{"v", to_a_kilogram.value, "m3/kg"}, {"m", fuel_kg, "kg"}},
                     line.need,
                     "L",
                     line.source},
                    reserve_working(line, reserve)};
    std::vector<Offer> offers;
    for (const GasPack& pack : packs.gas)
        if (pack.stocked && pack.units == units && pack.holds == "oxygen")
            offers.push_back({pack.name, whole_down(litres(pack.usable())), 1});
    line.pack_known = !offers.empty();
    if (offers.empty())
        line.why += "; no cylinder of oxygen is in the table of packs";
    else
        load(line, cover_by(whole_up(line.need + line.reserve), offers, &Offer::content), offers, 1);
    return line;
}

} // namespace

std::vector<Need> take_fuel(const std::vector<FuelUse>& uses, const Fuels& fuels, double reserve,
                            const Packs& packs, UnitSystem units) {
    std::vector<Need> lines;
    for (const OneFuel& group : by_fuel(uses, fuels)) {
        lines.push_back(fuel_line(group, reserve, packs, units));
        if (group.fuel.oxygen_m3_kg)
            lines.push_back(oxygen_line(group.fuel, lines.back().need, reserve, packs, units));
    }
    return lines;
}

} // namespace ringfill
