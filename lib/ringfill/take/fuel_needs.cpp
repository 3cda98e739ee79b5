#include <algorithm>
#include <numeric>
#include <stdexcept>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>
#include <range/v3/algorithm/max.hpp>
#include <range/v3/algorithm/max_element.hpp>
#include <range/v3/algorithm/minmax.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/take/cylinder_draw.hpp>
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

/// All that burns one fuel.
struct OneFuel {
    const Fuel* fuel = nullptr;
    std::vector<FuelUse> uses;
};

std::vector<OneFuel> by_fuel(const std::vector<FuelUse>& uses, const Fuels& fuels) {
    std::vector<OneFuel> groups;
    for (const FuelUse& use : uses) {
        if (use.fuel.empty() || (!(use.heat > Energy()) && use.unknown.empty()))
            continue;
        if (!(use.efficiency > 0))
            throw std::logic_error("a heater gives nothing to the metal");
        const auto fuel = ranges::find(fuels.fuels, use.fuel, &Fuel::name);
        if (fuel == fuels.fuels.end())
            throw std::logic_error(fmt::format("no fuel is named {}", use.fuel));
        group_by(groups, &OneFuel::fuel, &*fuel).uses.push_back(use);
    }
    return groups;
}

double megajoules(const FuelUse& use) {
    return use.heat.value() / mega;
}

std::string heat_in_words(const std::vector<FuelUse>& uses) {
    const auto most = ranges::max_element(uses, {}, megajoules);
    const std::string bore =
        most->parts.empty() ? most->bore : fmt::format("{} ({})", most->bore, most->parts);
    const std::vector<double> counts = each(uses, &FuelUse::count);
    const std::vector<double> heats = each(uses, megajoules);
    if (sum(counts) < 2)
        return fmt::format("{:.3g} MJ into {}", megajoules(*most), bore);
    return fmt::format("{:.3g} MJ into {:.0f} bores, the most {:.3g} MJ into one of {}",
                       sum_of_products(counts, heats), sum(counts), megajoules(*most), bore);
}

std::string share_in_words(const std::vector<FuelUse>& uses) {
    const auto [low, high] = ranges::minmax(uses | ranges::views::transform(&FuelUse::efficiency));
    return (low < high ? fmt::format("{:.3g} to ", 100 * low) : "") + fmt::format("{:.3g} %", 100 * high);
}

/// The flow that the cylinders must give: what the burner takes, or the most of a spell on average.
struct AskedFlow {
    MassFlow burner;
    MassFlow steady;
    std::string spell = {}; ///< that asks for most; empty: the burner is lit all the time
};

AskedFlow asked_flow(const Fuel& fuel, const std::vector<FuelUse>& uses) {
    const double net = fuel.net_J_kg.value;
    AskedFlow asked;
    for (const FuelUse& use : uses) {
        const MassFlow burner = in_si<MassFlow>(use.source.value() / net);
        asked.burner = std::max(asked.burner, burner);
        if (fuel.oxygen_m3_kg || use.spells.empty())
            asked.steady = std::max(asked.steady, burner);
        for (const auto& [name, heat, time] : use.spells) {
            if (fuel.oxygen_m3_kg || !(heat > Energy()))
                continue;
            const bool is_timed = time > Time();
            const MassFlow average =
                is_timed ? in_si<MassFlow>(heat.value() / time.value() / (use.efficiency * net)) : burner;
            if (const MassFlow flow = std::min(burner, average); flow > asked.steady) {
                asked.steady = flow;
                asked.spell = name;
            }
        }
    }
    return asked;
}

void load_fuel(Need& line, const Fuel& fuel, MassFlow flow, const Packs& packs, UnitSystem units,
               std::optional<Temperature> ambient) {
    const Temperature air = ambient.value_or(usual_ambient);
    const bool burns_in_air = !fuel.oxygen_m3_kg;
    std::vector<Offer> offers;
    for (const FuelPack& pack : sold(packs.fuel, units, line.substance))
        offers.push_back({.content = whole_down(pack.usable().value() * grams),
                          .name = pack.name,
                          .draw = whole_down(kg_h(cylinder_draw(pack, air)) * grams)});
    if (!is_offered(line, offers, "cylinder of this fuel"))
        return;
    if (burns_in_air && deg_c(air) < 0)
        line.why += "; below freezing a cylinder frosts and gives less";
    const std::int64_t all = whole_amount(line, grams);
    const Cover for_need = cover(all, offers);
    if (burns_in_air && line.need + line.reserve < little_fuel_kg) {
        line.why +=
            "; so little is burned by a hand torch, whatever a cylinder gives in an hour: the smallest one";
        load(line, for_need, offers, grams);
        return;
    }
    const Cover best = enough_for_both(for_need, all, whole_up(kg_h(flow) * grams), offers);
    if (best.counts != for_need.counts)
        line.why +=
            fmt::format("; {} would hold it but gives only {} steadily, {} gives {}",
                        in_words(packs_of(for_need, offers)), show(steady_draw(for_need, offers), units),
                        in_words(packs_of(best, offers)), show(steady_draw(best, offers), units));
    load(line, best, offers, grams);
}

/// "arm root (give boss_diameter)"
std::string unknown_in_words(const std::vector<FuelUse>& uses) {
    std::string words;
    for (const FuelUse& use : uses)
        if (!use.unknown.empty())
            words += fmt::format("{}{} ({})", words.empty() ? "" : ", ", use.bore, use.unknown);
    return words;
}

std::vector<FuelUse> known_of(std::vector<FuelUse> uses) {
    std::erase_if(uses, [](const FuelUse& use) { return !use.unknown.empty(); });
    return uses;
}

/// A line of which no bore gives a figure.
Need unknown_fuel(const Fuel& fuel, std::string unknown) {
    Need line;
    line.kind = kinds::fuel;
    line.substance = fuel.name;
    line.pack_known = false;
    line.why = "not known of " + unknown;
    line.unknown = std::move(unknown);
    line.source = fuel.net_J_kg.source;
    return line;
}

Need fuel_need(const Fuel& fuel, const std::vector<FuelUse>& all_uses, double reserve, const Packs& packs,
               UnitSystem units, std::optional<Temperature> ambient) {
    const std::vector<FuelUse> uses = known_of(all_uses);
    std::string unknown = unknown_in_words(all_uses);
    if (uses.empty())
        return unknown_fuel(fuel, std::move(unknown));
    const auto& [net_J_kg, source] = fuel.net_J_kg;
    const double net = net_J_kg / mega;
    double need = 0;
    for (const FuelUse& use : uses)
        need += use.count * megajoules(use) / (use.efficiency * net);
    const Power most = ranges::max(uses | ranges::views::transform(&FuelUse::source));
    const AskedFlow flow = asked_flow(fuel, uses);
    const std::string on_average =
        flow.steady < flow.burner
            ? fmt::format(", on average at most {} ({})", show(flow.steady, units), flow.spell)
            : "";
    Need line = need_of(kinds::fuel, fuel.name, {},
                        {{"n", each(uses, &FuelUse::count)},
                         {"q", each(uses, megajoules), "MJ"},
                         {"e", each(uses, &FuelUse::efficiency)},
                         {"H", net, "MJ/kg"},
                         {"share", reserve}},
                        {need, "sum(n*q/(e*H))", source}, {reserve * need, "share*need"},
                        fmt::format("{}; {} of the {:.4g} MJ/kg that {} gives reaches the metal; {:.3g} kW "
                                    "burns {}{}; on top {:.3g} %",
                                    heat_in_words(uses), share_in_words(uses), net, fuel.name,
                                    most.value() / 1e3, show(flow.burner, units), on_average, 100 * reserve),
                        source);
    load_fuel(line, fuel, flow.steady, packs, units, ambient);
    if (!unknown.empty())
        line.why += "; more is needed, not known, of " + unknown;
    line.unknown = std::move(unknown);
    return line;
}

Need oxygen_need(const Fuel& fuel, double fuel_kg, double reserve, const Packs& packs, UnitSystem units) {
    const auto& [to_a_kilogram, source] = *fuel.oxygen_m3_kg;
    const bool inch = units == UnitSystem::inch;
    const double need = litres(in_si<Volume>(to_a_kilogram * fuel_kg));
    Need line = need_of(kinds::oxygen, fuel.name, {},
                        {{"v", to_a_kilogram, "m3/kg"}, {"m", fuel_kg, "kg"}, {"share", reserve}},
                        {need, "1000*v*m", source}, {reserve * need, "share*need"},
                        fmt::format("{} to a {} of {} for a neutral flame; on top {:.3g} %",
                                    show(in_si<Volume>(to_a_kilogram * (inch ? factor::pound : 1)), units),
                                    inch ? "pound" : "kilogram", fuel.name, 100 * reserve),
                        source);
    load_best(line, cylinders_of(sold(packs.gas, units, "oxygen")), 1, "cylinder of oxygen");
    return line;
}

} // namespace

std::vector<Need> fuel_needs(const std::vector<FuelUse>& uses, const Fuels& fuels, double reserve,
                             const Packs& packs, UnitSystem units, std::optional<Temperature> ambient) {
    std::vector<Need> lines;
    for (const auto& [fuel, of_fuel] : by_fuel(uses, fuels)) {
        lines.push_back(fuel_need(*fuel, of_fuel, reserve, packs, units, ambient));
        if (fuel->oxygen_m3_kg && !is_unknown(lines.back()))
            lines.push_back(oxygen_need(*fuel, lines.back().need, reserve, packs, units));
    }
    return lines;
}

} // namespace ringfill
