#include <ringfill/take/energy_use.hpp>

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include <ringfill/take/group.hpp>

namespace ringfill {
namespace {

/// "warm-up 5.7, reheats 3.6, hold 22.6 MJ"
std::string heat_in_parts(const HeatRun& run) {
    std::string text;
    const std::pair<const char*, Energy> parts[] = {{"warm-up", run.warm_up_heat},
                                                    {run.held ? "kept warm" : "reheats", run.reheat_heat},
                                                    {"hold", run.post_heat_heat},
                                                    {"slow cooling", run.cooling().heat}};
    for (const auto& [name, heat] : parts)
        if (heat > Energy())
            text += fmt::format("{}{} {:.3g}", text.empty() ? "" : ", ", name, heat.value() / 1e6);
    return text + " MJ";
}

/// The stretches of a run in which the flame comes and goes.
std::vector<FlameSpell> flame_spells(const HeatRun& run) {
    const BossCooling& cooling = run.cooling();
    return {{"warm-up", run.warm_up_heat, run.warm_up.time},
            {run.held ? "kept warm while welding" : "reheats while welding", run.reheat_heat,
             run.welding + run.pausing + run.resting + run.reheating},
            {"hold", run.post_heat_heat, run.post_heating},
            {"slow cooling", cooling.heat, cooling.slowed}};
}

/// Why the heat of a bore that a flame warms is not known, or nothing: it is, or none is needed.
std::string unknown_heat(const WornBore& bore, const BorePlan& planned, Temperature air) {
    const Preheat& preheat = planned.heat.preheat;
    if (preheat.state == PreheatState::contradictory || preheat.state == PreheatState::not_known)
        return {};
    const auto figure = preheat.figure();
    if (!figure || !(figure->value > air))
        return {};
    if (!bore.boss_diameter)
        return "give boss_diameter";
    if (!planned.heat_balance)
        return planned.no_balance;
    const HeatBalance& balance = *planned.heat_balance;
    return balance.cold().is_whole() ? "" : std::string(word_of(balance.cold().run.end));
}

} // namespace

EnergyUse energy_use(const PlannedWork& work, const Shop& shop) {
    const std::vector<BorePlan>& bores = work.bores;
    const Power bar_drive = shop.cutting.bar_drive.value;
    const Temperature air = work.job.site.ambient.value_or(usual_ambient);
    const auto source = heat_source(work.job.heater, shop.fuels);
    EnergyUse all;
    auto& [fuels, procedures, mains] = all;
    mains.bar_drive = bar_drive;
    for (std::size_t i = 0; i < bores.size(); ++i) {
        const BorePlan& bore = bores[i];
        const double count = bore.count;
        const auto& balance = bore.heat_balance;
        mains.boring += count * bar_drive * bore.boring.cutting_time;
        const bool has_arc = bore.heat.voltage && bore.heat.current;
        mains.is_whole = mains.is_whole && has_arc;
        if (has_arc) {
            PowerUse& use = group_by(procedures, &PowerUse::procedure, bore.procedure);
            const Time run = balance ? balance->busiest_arc(in_si<Time>(duty_period)) : bore.metal.arc;
            use = {bore.procedure, *bore.heat.current, *bore.heat.voltage, std::max(use.busiest_arc, run)};
            mains.arc += count * use.voltage * use.current * bore.metal.arc;
        }
        if (std::string unknown = unknown_heat(work.job.bores[i], bore, air); source && !unknown.empty())
            fuels.push_back({bore.name,
                             bore.count,
                             Energy(),
                             source->efficiency,
                             source->power,
                             source->fuel,
                             "",
                             {},
                             std::move(unknown)});
        if (!balance)
            continue;
        const HeatSource& heater = balance->heater;
        const bool burns = balance->cold().is_whole();
        if (burns)
            fuels.push_back({bore.name, bore.count, balance->heater_heat(), heater.efficiency, heater.power,
                             heater.fuel, heat_in_parts(balance->cold().run),
                             flame_spells(balance->cold().run)});
        if (!heater.fuel.empty())
            continue;
        mains.electric_heater = heater.power;
        mains.is_whole = mains.is_whole && burns;
        if (burns)
            mains.heating += count * balance->heater_heat() / heater.efficiency;
    }
    return all;
}

} // namespace ringfill
