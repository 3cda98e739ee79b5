#include <ringfill/heat/heat_balance.hpp>

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/heat/all_blocks.hpp>

namespace ringfill {
namespace {

/// A limit that the rules of the family give as a value.
std::optional<double> family_value(const Preheat& preheat, std::string_view name) {
    const auto found = ranges::find(preheat.values, name, &AnsweredFigure::name);
    return found != preheat.values.end() && found->number > 0 ? std::optional(found->number) : std::nullopt;
}

/// Why a boss is not followed between its limits, empty when it is.
std::string closed_window(const BalanceCase& balance_case) {
    const Preheat& preheat = balance_case.heat.preheat;
    const double maximum = preheat.interpass_max->value.value();
    if (maximum - preheat.minimum->value.value() < least_window_K - 1e-6)
        return fmt::format(
            "between its preheat minimum and its interpass maximum there are less than {:.0f} K",
            least_window_K);
    if (balance_case.ambient.value() > maximum - least_over_air_K)
        return fmt::format("the air is less than {:.0f} K under its interpass maximum", least_over_air_K);
    return {};
}

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
    return closed_window(balance_case);
}

/// Iron that is laid cold takes its heat up as a whole, where its mass is known.
bool is_whole_part(const BalanceCase& balance_case) {
    return balance_case.heat.cold_iron && balance_case.bore.part_mass;
}

/// Iron is heated whole and slowly, or laid cold in stitches.
void treat_as_iron(HeatRunSettings& settings, const WornBore& bore, const BoreHeat& heat) {
    constexpr double iron_warms_K_per_h = 60; // practice
    settings.part = bore.part_mass.value_or(Mass());
    settings.by_stitches = heat.cold_iron;
    if (!heat.cold_iron && settings.minimum > chill_off)
        settings.heating_max_K_per_h = iron_warms_K_per_h;
}

/// The plates of the job where it tells of them.
std::vector<BossPlate> told_plates(const WornBore& bore) {
    std::vector<BossPlate> plates;
    for (const Plate& plate : bore.attached)
        plates.push_back({plate.thickness, plate.depth.value_or(bore.length / 2.0),
                          plate.reach.value_or(usual_reach(plate.thickness)), plate.wrapped});
    return plates;
}

/// A boss with the plates of one run, which is not followed yet.
BossRun boss_with(const BalanceCase& balance_case, const HotMetal& metal, std::vector<BossPlate> plates) {
    const WornBore& bore = balance_case.bore;
    const Preheat& preheat = balance_case.heat.preheat;
    const HeatSource& heater = *balance_case.heater;
    BossRun boss;
    for (const BossPlate& plate : plates)
        boss.plates.push_back(plate.thickness);
    if (bore.carry_off) // in place of the plates
        plates.clear();
    boss.settings = {.boss = {balance_case.build.skim_radius, *bore.boss_diameter / 2.0, bore.length,
                              balance_case.pitch, std::move(plates), bore.carry_off.value_or(Conductance())},
                     .metal = metal,
                     .ambient = balance_case.ambient,
                     .minimum = preheat.minimum->value,
                     .maximum = preheat.interpass_max->value,
                     .arc = balance_case.heat.thermal_efficiency * *balance_case.heat.voltage *
                            *balance_case.heat.current,
                     .heater = heater.into_metal(),
                     .heater_stays = heater.stays,
                     .skin = heater.skin.value_or(preheat.interpass_max->value),
                     .start_delay = heater.start_delay,
                     .step_over = balance_case.heat.cold_iron ? balance_case.peening : balance_case.step_over,
                     .cleaning = balance_case.cleaning,
                     .blanket = balance_case.blanket,
                     .cooling_max_K_per_h = family_value(preheat, "cooling_max_K_per_h"),
                     .rough_below = balance_case.rough_below,
                     .finish_below = std::max(balance_case.finish_below,
                                              in_si<Temperature>(balance_case.ambient.value() + over_air_K))};
    if (preheat.post_heat && !tempers_once_cool(balance_case.heat)) {
        boss.settings.hold_at = preheat.post_heat->temperature.value;
        boss.settings.hold_for = preheat.post_heat->time;
    }
    if (balance_case.heat.structure == "cast_iron")
        treat_as_iron(boss.settings, bore, balance_case.heat);
    if (preheat.slow_cooling)
        boss.settings.cooling_slow_down_to = preheat.slow_cooling->down_to;
    if (preheat.later)
        boss.settings.later = {preheat.later->minimum.value, preheat.later->maximum.value};
    return boss;
}

FollowedHeat not_yet_followed(const BalanceCase& balance_case) {
    const std::optional<HotMetal> metal = hot_metal(balance_case.base);
    if (std::string reason = missing(balance_case, metal); !reason.empty())
        return {{}, std::move(reason)};
    HeatBalance balance;
    balance.heater = *balance_case.heater;
    balance.metal = *metal;
    balance.ambient = balance_case.ambient;
    balance.hot =
        boss_with(balance_case, *metal,
                  is_whole_part(balance_case) ? std::vector<BossPlate>() : told_plates(balance_case.bore));
    if (!balance_case.bore.carry_off && balance_case.bore.attached.empty() && !is_whole_part(balance_case)) {
        const Length wall = *balance_case.build.wall;
        balance.plated =
            boss_with(balance_case, *metal, {{wall, balance_case.bore.length / 2.0, usual_reach(wall)}});
    }
    return {std::move(balance), {}};
}

bool would_melt(const HeatBalance& balance) {
    return balance.hot.run.end == HeatEnd::melts || balance.cold().run.end == HeatEnd::melts;
}

} // namespace

bool tempers_once_cool(const BoreHeat& heat) {
    return heat.structure == "martensitic";
}

Energy HeatBalance::heater_heat() const {
    const HeatRun& run = cold().run;
    return run.warm_up_heat + run.reheat_heat + run.post_heat_heat + run.cooling().heat;
}

bool HeatBalance::warms_up() const {
    return cold().run.warm_up.is_ready || !cold().run.steps.empty();
}

Temperature HeatBalance::peak() const {
    Temperature hottest = ambient;
    for (const HeatRun* run : {&hot.run, &cold().run})
        hottest = std::max({hottest, run->peak, run->warm_up.skin});
    return hottest;
}

Time HeatBalance::busiest_arc(Time period) const {
    if (!hot.is_whole() || !cold().is_whole())
        return period;
    return std::max(ringfill::busiest_arc(hot.run.arcs, period),
                    ringfill::busiest_arc(cold().run.arcs, period));
}

HeatEnd end_of(const HeatBalance& balance) {
    for (const BossRun* boss_run : {&balance.cold(), &balance.hot}) {
        if (!boss_run->is_whole())
            return boss_run->run.end;
        if (!boss_run->run.cooling().to_finish)
            return HeatEnd::never_cold;
    }
    return HeatEnd::done;
}

std::optional<Time> longest_cooling(const HeatBalance& balance, std::optional<Time> BossCooling::*part) {
    const auto& hot = balance.hot.run.cooling().*part;
    const auto& cold = balance.cold().run.cooling().*part;
    return hot && cold ? std::optional(std::max(*hot, *cold)) : std::nullopt;
}

std::optional<Time> total_time(const HeatBalance& balance, Time arc) {
    if (end_of(balance) != HeatEnd::done)
        return std::nullopt;
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    return cold.warm_up.time + cold.delay + arc + hot.told_pausing + hot.resting + cold.reheating +
           std::max(hot.post_heating, cold.post_heating) + *longest_cooling(balance, &BossCooling::to_rough) +
           *longest_cooling(balance, &BossCooling::to_finish);
}

Power heater_needed(const HeatBalance& balance) {
    const HeatRun& run = balance.cold().run;
    return std::max(run.needed.value_or(run.to_hold), Power()) / balance.heater.efficiency;
}

std::vector<FollowedHeat> follow_heat(const std::vector<BalanceCase>& cases, const RunBlocks& run_blocks,
                                      const std::function<void(std::size_t)>& begins) {
    struct Block {
        std::size_t bore;
        BossRun* boss;
    };
    std::vector<FollowedHeat> bores;
    for (const BalanceCase& balance_case : cases)
        bores.push_back(not_yet_followed(balance_case));
    std::vector<Block> blocks;
    for (std::size_t i = 0; i < bores.size(); ++i)
        if (auto& balance = bores[i].heat_balance) {
            blocks.push_back({i, &balance->hot});
            if (balance->plated)
                blocks.push_back({i, &*balance->plated});
        }
    run_all(blocks.size(), run_blocks, [&](std::size_t at) {
        const auto [bore, boss] = blocks[at];
        if (begins)
            begins(bore);
        boss->run = heat_run(boss->settings, cases[bore].passes);
    });
    for (FollowedHeat& bore : bores)
        if (bore.heat_balance && would_melt(*bore.heat_balance))
            bore = {{}, "its boss is so light that one ring would melt it"};
    return bores;
}

Time busiest_arc(const std::vector<std::pair<Time, Time>>& arcs, Time period) {
    // Of all stretches one that begins with an arc is the busiest: moving it there loses no arc.
    Time most = {};
    for (std::size_t first = 0; first < arcs.size(); ++first) {
        const Time end = arcs[first].first + period;
        Time burns = {};
        for (std::size_t i = first; i < arcs.size() && arcs[i].first < end; ++i)
            burns += std::min(arcs[i].second, end) - arcs[i].first;
        most = std::max(most, burns);
    }
    return most;
}

} // namespace ringfill
