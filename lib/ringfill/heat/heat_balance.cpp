#include <ringfill/heat/heat_balance.hpp>

#include <algorithm>
#include <cmath>
#include <utility>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>

namespace ringfill {
namespace {

constexpr std::string_view slow_cooling = "cooling_max_K_per_h";

/// Why there is no balance, empty when there is one.
std::string missing(const BalanceCase& balance_case, const std::optional<HotMetal>& metal) {
    const Preheat& preheat = balance_case.heat.preheat;
    const std::pair<bool, std::string> reasons[] = {
        {!balance_case.bore.boss_diameter || !balance_case.build.wall, "the job does not give boss_diameter"},
        {!preheat.minimum || (preheat.asked != PreheatState::figure && preheat.asked != PreheatState::none),
         "no preheat figure is known"},
        {heated_against(balance_case.heat) != HeatedAgainst::nothing,
         "its approved procedure heats it against its rules"},
        {!preheat.interpass_max, "no interpass maximum is known"},
        {preheat.closed, "between its preheat minimum and its interpass maximum no ring could begin"},
        {!balance_case.heat.voltage, "the job does not give the voltage"},
        {!balance_case.heat.current, "the current is not known"},
        {!metal, "the table gives no specific heat of " + balance_case.bore.base},
        {!balance_case.heater, "the table of fuels does not have its heater"},
        {balance_case.passes.empty(), "it and the job have too many rings to be followed one by one"}};
    for (const auto& [holds, reason] : reasons)
        if (holds)
            return reason;
    return {};
}

/// Iron is heated whole and slowly, or laid cold in stitches; the whole of it takes the heat of the arc then.
void treat_as_iron(HeatRunSettings& settings, const BoreHeat& heat) {
    constexpr double iron_warms_K_per_h = 60; // practice
    settings.in_stitches = heat.cold_iron;
    if (heat.cold_iron)
        settings.boss.mass = settings.heated;
    else if (settings.minimum > chill_off)
        settings.warming_max_K_per_h = iron_warms_K_per_h;
}

BossRun run_with(const BalanceCase& balance_case, const HotMetal& metal, std::vector<Length> plates) {
    const Preheat& preheat = balance_case.heat.preheat;
    Boss boss = boss_of(balance_case.bore, balance_case.build, metal, plates);
    const bool is_iron = balance_case.heat.structure == "cast_iron";
    if (is_iron && balance_case.bore.part_mass)
        boss.part = *balance_case.bore.part_mass;
    boss.heated = std::max(boss.heated, boss.part);
    const Conductance to_air = in_si<Conductance>(still_air_W_m2K * boss.surface.value());
    HeatRunSettings settings{.boss = {boss.mass, metal, to_air + boss.sink, scaled_emissivity * boss.surface,
                                      balance_case.ambient},
                             .heated = boss.heated,
                             .minimum = preheat.minimum->value,
                             .maximum = preheat.interpass_max->value,
                             .arc = balance_case.heat.thermal_efficiency * *balance_case.heat.voltage *
                                    *balance_case.heat.current,
                             .heater = balance_case.heater->into_metal(),
                             .rough_below = balance_case.rough_below,
                             .finish_below = balance_case.finish_below};
    if (preheat.post_heat && !tempers_once_cool(balance_case.heat)) {
        settings.hold_at = preheat.post_heat->temperature.value;
        settings.hold_for = preheat.post_heat->time;
    }
    const auto slow = ranges::find(preheat.values, slow_cooling, &AnsweredFigure::name);
    if (slow != preheat.values.end() && slow->number > 0)
        settings.cooling_max_K_per_h = slow->number;
    if (is_iron)
        treat_as_iron(settings, balance_case.heat);
    if (preheat.slow_cooling)
        settings.cooling_slow_down_to = preheat.slow_cooling->down_to;
    if (preheat.later)
        settings.later = {preheat.later->minimum.value, preheat.later->maximum.value};
    HeatRun run = heat_run(settings, balance_case.passes);
    return {boss, std::move(plates), std::move(settings), std::move(run)};
}

} // namespace

std::optional<HeatSource> heat_source(const std::optional<Heater>& heater, const Fuels& fuels) {
    const std::string kind = heater ? heater->kind : std::string(usual_heater);
    const auto known = ranges::find(fuels.heaters, kind, &HeaterKind::name);
    if (known == fuels.heaters.end())
        return std::nullopt;
    HeatSource source{kind, known->power.value, known->efficiency.value, known->fuel};
    if (!heater)
        source.assumed.push_back({"heater.kind", kind, "practice"});
    if (heater && heater->power)
        source.power = *heater->power;
    else
        source.assumed.push_back(
            {"heater.power", fmt::format("{:.3g} kW", source.power.value() / 1e3), known->power.source});
    if (heater && heater->efficiency)
        source.efficiency = *heater->efficiency;
    else
        source.assumed.push_back(
            {"heater.efficiency", fmt::format("{:.3g}", source.efficiency), known->efficiency.source});
    return source;
}

bool tempers_once_cool(const BoreHeat& heat) {
    return heat.structure == "martensitic";
}

Energy HeatBalance::heater_heat() const {
    const HeatRun& run = cold().run;
    return run.warm_up_heat + run.reheat_heat + run.post_heat_heat + run.slow_heat;
}

bool HeatBalance::warms_up() const {
    return cold().run.end != HeatEnd::heater_too_small || !cold().run.steps.empty();
}

Time HeatBalance::busiest_arc(Time period) const {
    if (!hot.is_whole() || !cold().is_whole())
        return period;
    return std::max(ringfill::busiest_arc(hot.run.steps, period),
                    ringfill::busiest_arc(cold().run.steps, period));
}

HeatEnd end_of(const HeatBalance& balance) {
    for (const BossRun* boss_run : {&balance.cold(), &balance.hot}) {
        if (!boss_run->is_whole())
            return boss_run->run.end;
        if (!boss_run->run.cooling_to_finish)
            return HeatEnd::never_cold;
    }
    return HeatEnd::done;
}

std::optional<Time> longest(const HeatBalance& balance, std::optional<Time> HeatRun::*stage) {
    const auto& hot = balance.hot.run.*stage;
    const auto& cold = balance.cold().run.*stage;
    return hot && cold ? std::optional(std::max(*hot, *cold)) : std::nullopt;
}

std::optional<Time> total_time(const HeatBalance& balance, Time arc) {
    if (end_of(balance) != HeatEnd::done)
        return std::nullopt;
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    return cold.warm_up + arc + hot.waiting + cold.reheating + std::max(hot.post_heating, cold.post_heating) +
           *longest(balance, &HeatRun::cooling_to_rough) + *longest(balance, &HeatRun::cooling_to_finish);
}

Temperature hardest_to_hold(const HeatBalance& balance) {
    const BossRun& cold = balance.cold();
    const HeatRunSettings& settings = cold.settings;
    Temperature hardest = std::max(settings.minimum, settings.hold_at.value_or(settings.minimum));
    if (cold.run.end == HeatEnd::heater_too_small)
        hardest = std::max(hardest, cold.run.end_at);
    // A boss that loses more than the arc gives falls under its minimum and is heated again.
    if (heat_loss(settings.boss, settings.minimum) > settings.arc)
        hardest = std::max(hardest, reheated_to(settings));
    return hardest;
}

Power heater_needed(const HeatBalance& balance) {
    const Power loss = heat_loss(balance.cold().settings.boss, hardest_to_hold(balance));
    return std::max(loss, Power()) / balance.heater.efficiency;
}

FollowedHeat follow_heat(const BalanceCase& balance_case) {
    const std::optional<HotMetal> metal = hot_metal(balance_case.base);
    if (std::string reason = missing(balance_case, metal); !reason.empty())
        return {{}, std::move(reason)};
    HeatBalance balance;
    balance.heater = *balance_case.heater;
    balance.metal = *metal;
    balance.ambient = balance_case.ambient;
    std::vector<Length> plates;
    for (const Plate& plate : balance_case.bore.attached)
        plates.push_back(plate.thickness);
    balance.hot = run_with(balance_case, *metal, std::move(plates));
    if (!balance_case.bore.carry_off && balance_case.bore.attached.empty())
        balance.plated = run_with(balance_case, *metal, {*balance_case.build.wall});
    for (const BossRun* boss_run : {&std::as_const(balance).hot, &std::as_const(balance).cold()})
        if (!std::isfinite(boss_run->run.ring_peak.value()))
            return {{}, "its boss is so light that one ring takes it past any temperature"};
    balance.biot = biot_number(balance.hot.boss, *metal, balance.hot.settings.maximum, balance_case.ambient);
    return {std::move(balance), {}};
}

Time busiest_arc(const std::vector<HeatStep>& steps, Time period) {
    // Of all stretches one that begins with a weld is the busiest: moving it there loses no arc.
    Time most = {};
    for (auto first = steps.begin(); first != steps.end(); ++first) {
        Time arc = {};
        Time left = period;
        for (auto step = first; step != steps.end() && left > Time(); ++step) {
            const Time here = std::min(left, step->time);
            arc += step->stage == HeatStage::weld ? here : Time();
            left -= here;
        }
        if (first->stage == HeatStage::weld)
            most = std::max(most, arc);
    }
    return most;
}

} // namespace ringfill
