#include <algorithm>

#include <fmt/format.h>

#include <ringfill/take/group.hpp>
#include <ringfill/take/uses.hpp>

namespace ringfill {
namespace {

bool burns(const BorePlan& bore) {
    return bore.heat_balance && bore.heat_balance->cold().is_whole();
}

/// "warm-up 5.7, reheats 3.6, hold 22.6, slow cooling 25.8 MJ"
std::string heat_in_parts(const HeatRun& run) {
    std::string text;
    const std::pair<const char*, Energy> parts[] = {{"warm-up", run.warm_up_heat},
                                                    {"reheats", run.reheat_heat},
                                                    {"hold", run.post_heat_heat},
                                                    {"slow cooling, less under a blanket", run.slow_heat}};
    for (const auto& [name, heat] : parts)
        if (heat > Energy())
            text += fmt::format("{}{} {:.3g}", text.empty() ? "" : ", ", name, heat.value() / 1e6);
    return text + " MJ";
}

} // namespace

std::vector<FuelUse> fuel_uses(const std::vector<BorePlan>& bores) {
    std::vector<FuelUse> uses;
    for (const BorePlan& bore : bores)
        if (burns(bore)) {
            const HeatBalance& balance = *bore.heat_balance;
            uses.push_back({bore.name, bore.count, balance.heater_heat(), balance.heater.efficiency,
                            balance.heater.power, balance.heater.fuel, heat_in_parts(balance.cold().run)});
        }
    return uses;
}

std::vector<PowerUse> power_uses(const std::vector<BorePlan>& bores) {
    std::vector<PowerUse> uses;
    for (const BorePlan& bore : bores) {
        if (!bore.heat.voltage || !bore.heat.current)
            continue;
        const Time run =
            bore.heat_balance ? bore.heat_balance->busiest_arc(in_si<Time>(duty_period)) : bore.metal.arc;
        PowerUse& use = group_by(uses, &PowerUse::procedure, bore.procedure);
        use = {bore.procedure, *bore.heat.current, *bore.heat.voltage, std::max(use.busiest_arc, run)};
    }
    return uses;
}

MainsUse mains_use(const std::vector<BorePlan>& bores, Power bar_drive) {
    MainsUse mains;
    mains.bar_drive = bar_drive;
    for (const BorePlan& bore : bores) {
        const auto count = static_cast<double>(bore.count);
        mains.boring += count * bar_drive * bore.boring.cutting_time;
        const bool has_arc = bore.heat.voltage && bore.heat.current;
        if (has_arc)
            mains.arc += count * *bore.heat.voltage * *bore.heat.current * bore.metal.arc;
        mains.is_whole = mains.is_whole && has_arc;
        if (!bore.heat_balance || !bore.heat_balance->heater.fuel.empty())
            continue;
        const HeatSource& heater = bore.heat_balance->heater;
        mains.electric_heater = heater.power;
        mains.is_whole = mains.is_whole && burns(bore);
        if (burns(bore))
            mains.heating += count * bore.heat_balance->heater_heat() / heater.efficiency;
    }
    return mains;
}

std::vector<StickUse> stick_uses(const std::vector<BorePlan>& bores) {
    std::vector<StickUse> uses;
    for (const BorePlan& bore : bores) {
        const Preheat& preheat = bore.heat.preheat;
        if (preheat.state == PreheatState::contradictory || preheat.state == PreheatState::not_known)
            continue;
        StickUse& use = uses.emplace_back(StickUse{bore.name, {}, {}});
        const bool never_heated = rings_are_heated_against_its_rules(bore.heat);
        if (*preheat.least() > chill_off && !never_heated)
            use.minimum = preheat.least();
        const auto& own_most = preheat.overruled.interpass_max;
        if (const auto& most = never_heated && own_most ? own_most : preheat.interpass_max)
            use.maximum = most->value;
    }
    return uses;
}

} // namespace ringfill
