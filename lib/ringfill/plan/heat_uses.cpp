#include <ringfill/plan/heat_uses.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/take/take_blanket.hpp>
#include <ringfill/take/take_fuel.hpp>

namespace ringfill {
namespace {

/// A run that breaks off gives no figure of fuel that could be loaded: the cautions say so.
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

std::vector<BlanketUse> blanket_uses(const std::vector<BorePlan>& bores) {
    std::vector<BlanketUse> uses;
    for (const BorePlan& bore : bores) {
        const Preheat& preheat = bore.heat.preheat;
        if (is_heated_against_its_rules(bore.heat) || bore.heat.cools_in_the_open || bore.heat.cold_iron)
            continue; // kept hot it would be harmed
        const bool preheated =
            preheat.minimum && (preheat.minimum->value > chill_off || preheat.asked_without_figure);
        const bool slow = preheat.post_heat || ranges::any_of(preheat.values, [](const auto& value) {
                              return value.name == "cooling_max_K_per_h";
                          });
        uses.push_back({bore.name, preheated, slow});
    }
    return uses;
}

/// The load of each procedure; a bore without a balance is welded without a stop.
std::vector<PowerUse> power_uses(const std::vector<BorePlan>& bores) {
    std::vector<PowerUse> uses;
    for (const BorePlan& bore : bores) {
        if (!bore.heat.voltage || !bore.heat.current)
            continue;
        const Time run =
            bore.heat_balance ? bore.heat_balance->busiest_arc(in_si<Time>(duty_period)) : bore.metal.arc;
        const auto known = ranges::find(uses, bore.procedure, &PowerUse::procedure);
        if (known == uses.end())
            uses.push_back({bore.procedure, *bore.heat.current, *bore.heat.voltage, run});
        else
            known->busiest_arc = std::max(known->busiest_arc, run);
    }
    return uses;
}

} // namespace

MainsUse mains_use(const std::vector<BorePlan>& bores, Power bar_drive) {
    MainsUse mains;
    mains.bar_drive = bar_drive;
    for (const BorePlan& bore : bores) {
        const auto count = static_cast<double>(bore.count);
        mains.boring += count * bar_drive * bore.boring.cutting_time;
        if (bore.heat.voltage && bore.heat.current)
            mains.arc += count * *bore.heat.voltage * *bore.heat.current * bore.metal.arc;
        if (!bore.heat_balance || !bore.heat_balance->heater.fuel.empty())
            continue;
        const HeatSource& heater = bore.heat_balance->heater;
        mains.electric_heater = heater.power;
        if (burns(bore))
            mains.heating += count * bore.heat_balance->heater_heat() / heater.efficiency;
    }
    return mains;
}

std::vector<Need> heat_needs(const Job& job, const std::vector<BorePlan>& bores, const Shop& shop) {
    std::vector<Need> lines =
        take_fuel(fuel_uses(bores), shop.fuels, job.reserve, shop.packs, job.units, job.site.ambient);
    ranges::push_back(lines, take_blanket(blanket_uses(bores)));
    ranges::push_back(lines, take_power(power_uses(bores), mains_use(bores, shop.cutting.bar_drive.value),
                                        job.reserve, job.units));
    return lines;
}

std::vector<Assumed> heat_assumed(const Job& job, const std::vector<BorePlan>& bores) {
    std::vector<Assumed> assumed;
    bool told = false;
    for (std::size_t i = 0; i < bores.size(); ++i) {
        if (!bores[i].heat_balance)
            continue;
        const HeatBalance& balance = *bores[i].heat_balance;
        if (!told) {
            told = true;
            assumed = balance.heater.assumed;
            if (!job.site.ambient)
                assumed.push_back({"site.ambient", show(balance.ambient, job.units), "practice"});
        }
        if (balance.plated)
            assumed.push_back({job.bores[i].path + ".attached",
                               fmt::format("from nothing to one plate of {}, as thick as the wall",
                                           show(balance.plated->plates.front(), job.units)),
                               "practice"});
    }
    return assumed;
}

} // namespace ringfill
