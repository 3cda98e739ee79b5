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
std::string missing(const BalanceCase& what, const std::optional<HotMetal>& metal) {
    const Preheat& preheat = what.heat.preheat;
    if (!what.bore.boss_diameter || !what.build.wall)
        return "the job does not give boss_diameter";
    if (!preheat.figure())
        return "no preheat figure is known";
    if (is_heated_against_its_rules(what.heat))
        return "its approved procedure heats it against its rules";
    if (!preheat.interpass_max)
        return "no interpass maximum is known";
    if (preheat.state == PreheatState::contradictory)
        return "its preheat minimum lies over its interpass maximum";
    if (!what.heat.voltage)
        return "the job does not give the voltage";
    if (!what.heat.current)
        return "the current is not known";
    if (!metal)
        return fmt::format("the table gives no specific heat of {}", what.bore.base);
    if (!what.heater)
        return "the table of fuels does not have its heater";
    if (what.passes.empty())
        return "it and the job have too many rings to be followed one by one";
    return {};
}

BossRun run_with(const BalanceCase& what, const HotMetal& metal, std::vector<Length> plates) {
    const Preheat& preheat = what.heat.preheat;
    BossRun one;
    one.boss = boss_of(what.bore, what.build, metal, plates);
    one.plates = std::move(plates);
    HeatRunSettings& settings = one.settings;
    settings.boss.mass = one.boss.mass;
    settings.boss.metal = metal;
    settings.boss.conductance =
        in_si<Conductance>(still_air_W_m2K * one.boss.surface.value()) + one.boss.sink;
    settings.boss.emitting = scaled_emissivity * one.boss.surface;
    settings.boss.ambient = what.ambient;
    settings.heated = one.boss.heated;
    settings.rough_below = what.rough_below;
    settings.finish_below = what.finish_below;
    settings.minimum = preheat.minimum->value;
    settings.maximum = preheat.interpass_max->value;
    settings.arc = what.heat.thermal_efficiency * *what.heat.voltage * *what.heat.current;
    settings.heater = what.heater->into_metal();
    if (preheat.post_heat && !tempers_once_cool(what.heat)) {
        settings.hold_at = preheat.post_heat->temperature.value;
        settings.hold_for = preheat.post_heat->time;
    }
    const auto slow = ranges::find(preheat.values, slow_cooling, &AnsweredFigure::name);
    if (slow != preheat.values.end() && slow->number > 0)
        settings.cooling_max_K_per_h = slow->number;
    one.run = heat_run(settings, what.passes);
    return one;
}

/// Arc within the period that begins with a step.
Time arc_from(const std::vector<HeatStep>& steps, std::size_t first, Time period) {
    Time arc = {};
    Time left = period;
    for (std::size_t i = first; i < steps.size() && left > Time(); ++i) {
        const Time here = std::min(left, steps[i].time);
        if (steps[i].stage == HeatStage::weld)
            arc += here;
        left -= here;
    }
    return arc;
}

} // namespace

std::optional<HeatSource> heat_source(const std::optional<Heater>& heater, const Fuels& fuels) {
    const std::string kind = heater ? heater->kind : std::string(usual_heater);
    const auto known = ranges::find(fuels.heaters, kind, &HeaterKind::name);
    if (known == fuels.heaters.end())
        return std::nullopt;
    HeatSource source;
    source.kind = kind;
    source.power = known->power.value;
    source.efficiency = known->efficiency.value;
    source.fuel = known->fuel;
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

BalanceEnd end_of(const HeatBalance& balance) {
    for (const BossRun* one : {&balance.cold(), &balance.hot}) {
        if (one->run.end == HeatEnd::heater_too_small)
            return BalanceEnd::heater_too_small;
        if (one->run.end == HeatEnd::never_cools)
            return BalanceEnd::never_cools;
        if (!one->run.cooling_to_finish)
            return BalanceEnd::never_cold;
    }
    return BalanceEnd::done;
}

std::string_view words_of(BalanceEnd end) {
    switch (end) {
    case BalanceEnd::heater_too_small:
        return "the heater is too small";
    case BalanceEnd::never_cools:
        return "the boss does not cool to where the work may go on";
    case BalanceEnd::never_cold:
        return "the boss does not cool to where boring or measuring may begin";
    case BalanceEnd::done:
        break;
    }
    return "done";
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

std::variant<HeatBalance, std::string> heat_balance(const BalanceCase& what) {
    const std::optional<HotMetal> metal = hot_metal(what.base);
    if (std::string reason = missing(what, metal); !reason.empty())
        return reason;
    HeatBalance balance;
    balance.heater = *what.heater;
    balance.metal = *metal;
    balance.ambient = what.ambient;
    std::vector<Length> plates;
    for (const Plate& plate : what.bore.attached)
        plates.push_back(plate.thickness);
    balance.hot = run_with(what, *metal, std::move(plates));
    if (!what.bore.carry_off && what.bore.attached.empty())
        balance.plated = run_with(what, *metal, {*what.build.wall});
    for (const BossRun* one : {&std::as_const(balance).hot, &std::as_const(balance).cold()})
        if (!std::isfinite(one->run.ring_peak.value()))
            return "its boss is so light that one ring takes it past any temperature";
    balance.biot = biot_number(balance.hot.boss, *metal, balance.hot.settings.maximum, what.ambient);
    return balance;
}

Time busiest_arc(const std::vector<HeatStep>& steps, Time period) {
    // Of all stretches one that begins with a weld is the busiest: moving it there loses no arc.
    Time most = {};
    for (std::size_t i = 0; i < steps.size(); ++i)
        if (steps[i].stage == HeatStage::weld)
            most = std::max(most, arc_from(steps, i, period));
    return most;
}

} // namespace ringfill
