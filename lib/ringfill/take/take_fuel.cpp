#include <ringfill/take/take_fuel.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <stdexcept>
#include <utility>

#include <fmt/format.h>

#include <ringfill/take/cylinders.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double mega = 1e6;
constexpr double grams = 1e3; // in a kilogram

/// Under this a hand torch takes off the chill, and no cylinder is asked for its draw [common practice, no
/// source].
constexpr double little_fuel_kg = 0.2;

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
    std::vector<std::string> parts; // of the heat, in words
    Power source;                   // the most that is given off at once
};

OneFuel& group_of(const std::string& name, std::vector<OneFuel>& groups, const Fuels& fuels) {
    for (OneFuel& known : groups)
        if (known.fuel.name == name)
            return known;
    for (const Fuel& fuel : fuels.fuels)
        if (fuel.name == name)
            return groups.emplace_back(OneFuel{fuel, {}, {}, {}, {}, {}, {}});
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

void load_fuel(Need& line, MassFlow flow, const Packs& packs, const std::string& holds, UnitSystem units,
               std::optional<Temperature> ambient) {
    std::vector<Offer> offers;
    for (const FuelPack& pack : packs.fuel)
        if (pack.stocked && pack.units == units && pack.holds == holds)
            offers.push_back({pack.name, whole_down(pack.usable().value() * grams),
                              whole_down(draw_share(ambient) * kg_h(pack.draw.value) * grams)});
    line.pack_known = !offers.empty();
    if (offers.empty()) {
        line.why += "; no cylinder of this fuel is in the table of packs";
        return;
    }
    if (draw_share(ambient) < 1)
        line.why += "; below freezing a cylinder frosts and counts with half its usual draw";
    const std::int64_t all = whole_up((line.need + line.reserve) * grams);
    const Cover for_need = cover_by(all, offers, &Offer::content);
    if (line.need + line.reserve < little_fuel_kg) {
        line.why +=
            "; so little is burned by a hand torch, whatever a cylinder gives in an hour: the smallest "
            "one";
        load_cylinders(line, for_need, offers, grams);
        return;
    }
    const Cover best = enough_for_both(for_need, all, whole_up(kg_h(flow) * grams), offers);
    if (best.counts != for_need.counts)
        line.why +=
            fmt::format("; {} would hold it but gives only {} steadily, {} gives {}",
                        cylinders_in_words(for_need, offers), show(steady_draw(for_need, offers), units),
                        cylinders_in_words(best, offers), show(steady_draw(best, offers), units));
    load_cylinders(line, best, offers, grams);
}

Need fuel_line(const OneFuel& group, double reserve, const Packs& packs, UnitSystem units,
               std::optional<Temperature> ambient) {
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
    load_fuel(line, flow, packs, fuel.name, units, ambient);
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
            offers.push_back({pack.name, whole_down(litres(pack.usable())), {}});
    line.pack_known = !offers.empty();
    if (offers.empty())
        line.why += "; no cylinder of oxygen is in the table of packs";
    else
        load_cylinders(line, cover_by(whole_up(line.need + line.reserve), offers, &Offer::content), offers,
                       1);
    return line;
}

} // namespace

std::vector<Need> take_fuel(const std::vector<FuelUse>& uses, const Fuels& fuels, double reserve,
                            const Packs& packs, UnitSystem units, std::optional<Temperature> ambient) {
    std::vector<Need> lines;
    for (const OneFuel& group : by_fuel(uses, fuels)) {
        lines.push_back(fuel_line(group, reserve, packs, units, ambient));
        if (group.fuel.oxygen_m3_kg)
            lines.push_back(oxygen_line(group.fuel, lines.back().need, reserve, packs, units));
    }
    return lines;
}

} // namespace ringfill
