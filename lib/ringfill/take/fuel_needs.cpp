#include <algorithm>
#include <cmath>
#include <numeric>
#include <stdexcept>
#include <utility>

#include <fmt/format.h>

#include <ringfill/take/group.hpp>
#include <ringfill/take/needs.hpp>
#include <ringfill/take/offers.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double mega = 1e6;

/// Under this a hand torch takes off the chill, and no cylinder is asked for its draw [common practice, no
/// source].
constexpr double little_fuel_kg = 0.2;

/// All that burns one fuel, a row a bore.
struct OneFuel {
    Fuel fuel;
    std::vector<std::string> bores;
    std::vector<double> counts;
    std::vector<double> heats; // MJ into the metal of one
    std::vector<double> shares;
    std::vector<std::string> parts; // of the heat, in words
    Power source;                   // the most that is given off at once
};

Fuel fuel_named(const std::string& name, const Fuels& fuels) {
    for (const Fuel& fuel : fuels.fuels)
        if (fuel.name == name)
            return fuel;
    throw std::logic_error(fmt::format("no fuel is named {}", name));
}

std::vector<OneFuel> by_fuel(const std::vector<FuelUse>& uses, const Fuels& fuels) {
    std::vector<OneFuel> groups;
    for (const FuelUse& use : uses) {
        if (use.fuel.empty() || !(use.heat > Energy()))
            continue;
        if (!(use.efficiency > 0))
            throw std::logic_error("a heater gives nothing to the metal");
        OneFuel& group = group_for(
            groups, [&](const OneFuel& known) { return known.fuel.name == use.fuel; },
            [&] { return OneFuel{fuel_named(use.fuel, fuels), {}, {}, {}, {}, {}, {}}; });
        group.bores.push_back(use.bore);
        group.counts.push_back(use.count);
        group.parts.push_back(use.parts);
        group.heats.push_back(use.heat.value() / mega);
        group.shares.push_back(use.efficiency);
        group.source = std::max(group.source, use.source);
    }
    return groups;
}

std::string heat_in_words(const OneFuel& group) {
    const auto most = std::max_element(group.heats.begin(), group.heats.end());
    const auto index = static_cast<std::size_t>(most - group.heats.begin());
    const std::string bore = group.parts[index].empty()
                                 ? group.bores[index]
                                 : fmt::format("{} ({})", group.bores[index], group.parts[index]);
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

/// Of the usual draw of a cylinder.
double draw_share(std::optional<Temperature> ambient) {
    constexpr double freezing = 273.15;
    return ambient && ambient->value() < freezing ? 0.5 : 1.0;
}

void load_fuel(Need& line, MassFlow flow, const Packs& packs, UnitSystem units,
               std::optional<Temperature> ambient) {
    std::vector<Offer> offers;
    for (const FuelPack& pack : sold(packs.fuel, units, line.substance))
        offers.push_back({pack.name, whole_down(pack.usable().value() * grams),
                          whole_down(draw_share(ambient) * kg_h(pack.draw.value) * grams)});
    if (!is_offered(line, offers, "cylinder of this fuel"))
        return;
    if (draw_share(ambient) < 1)
        line.why += "; below freezing a cylinder frosts and counts with half its usual draw";
    const std::int64_t all = whole_amount(line, grams);
    const Cover for_need = cover_by(all, offers, &Offer::content);
    if (line.need + line.reserve < little_fuel_kg) {
        line.why +=
            "; so little is burned by a hand torch, whatever a cylinder gives in an hour: the smallest "
            "one";
        load(line, for_need, offers, grams);
        return;
    }
    const Cover best = enough_for_both(for_need, all, whole_up(kg_h(flow) * grams), offers);
    if (best.counts != for_need.counts)
        line.why += fmt::format("; {} would hold it but gives only {} steadily, {} gives {}",
                                in_words(for_need, offers), show(steady_draw(for_need, offers), units),
                                in_words(best, offers), show(steady_draw(best, offers), units));
    load(line, best, offers, grams);
}

Need fuel_need(const OneFuel& group, double reserve, const Packs& packs, UnitSystem units,
               std::optional<Temperature> ambient) {
    const Fuel& fuel = group.fuel;
    const double net = fuel.net_J_kg.value / mega;
    double need = 0;
    for (std::size_t i = 0; i < group.heats.size(); ++i)
        need += group.counts[i] * group.heats[i] / (group.shares[i] * net);
    Need line =
        need_of(NeedKind::fuel, fuel.name, {},
                {need,
                 "sum(n*q/(e*H))",
                 {{"n", group.counts}, {"q", group.heats, "MJ"}, {"e", group.shares}, {"H", net, "MJ/kg"}},
                 fuel.net_J_kg.source},
                share_on_top(reserve, need, NeedKind::fuel));
    line.source = fuel.net_J_kg.source;
    const MassFlow flow = in_si<MassFlow>(group.source.value() / fuel.net_J_kg.value);
    line.why =
        fmt::format("{}; {} of the {:.4g} MJ/kg that {} gives reaches the metal; {:.3g} kW burns {}; on "
                    "top {:.3g} %",
                    heat_in_words(group), share_in_words(group), net, fuel.name, group.source.value() / 1e3,
                    show(flow, units), 100 * reserve);
    load_fuel(line, flow, packs, units, ambient);
    return line;
}

Need oxygen_need(const Fuel& fuel, double fuel_kg, double reserve, const Packs& packs, UnitSystem units) {
    const Sourced<double>& to_a_kilogram = *fuel.oxygen_m3_kg;
    const bool inch = units == UnitSystem::inch;
    const double need = litres(in_si<Volume>(to_a_kilogram.value * fuel_kg));
    Need line = need_of(
        NeedKind::oxygen, fuel.name, {},
        {need, "1000*v*m", {{"v", to_a_kilogram.value, "m3/kg"}, {"m", fuel_kg, "kg"}}, to_a_kilogram.source},
        share_on_top(reserve, need, NeedKind::oxygen));
    line.source = to_a_kilogram.source;
    line.why = fmt::format("{} to a {} of {} for a neutral flame; on top {:.3g} %",
                           show(in_si<Volume>(to_a_kilogram.value * (inch ? factor::pound : 1)), units),
                           inch ? "pound" : "kilogram", fuel.name, 100 * reserve);
    std::vector<Offer> offers;
    for (const GasPack& pack : sold(packs.gas, units, "oxygen"))
        offers.push_back({pack.name, whole_down(litres(pack.usable()))});
    load_best(line, offers, 1, "cylinder of oxygen");
    return line;
}

} // namespace

std::vector<Need> fuel_needs(const std::vector<FuelUse>& uses, const Fuels& fuels, double reserve,
                             const Packs& packs, UnitSystem units, std::optional<Temperature> ambient) {
    std::vector<Need> lines;
    for (const OneFuel& group : by_fuel(uses, fuels)) {
        lines.push_back(fuel_need(group, reserve, packs, units, ambient));
        if (group.fuel.oxygen_m3_kg)
            lines.push_back(oxygen_need(group.fuel, lines.back().need, reserve, packs, units));
    }
    return lines;
}

} // namespace ringfill
