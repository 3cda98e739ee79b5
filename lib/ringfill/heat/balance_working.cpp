#include <ringfill/heat/heat_balance.hpp>

#include <algorithm>

namespace ringfill {
namespace {

constexpr double kilo = 1e3;

Input convection() {
    return {"h_c", still_air_W_m2K, "W/(m2 K)"};
}
Input emissivity() {
    return {"eps", scaled_emissivity};
}
Input radiation() {
    return {"sigma", stefan_boltzmann, "W/(m2 K4)"};
}
Input kelvin(std::string symbol, Temperature temperature) {
    return {std::move(symbol), temperature.value(), "K"};
}
Amount in_kw(Power power) {
    return {power.value() / kilo, "kW"};
}
Amount in_kj(Energy energy) {
    return {energy.value() / kilo, "kJ"};
}

/// What the loss of a boss hangs on, between the inputs that come before and after it.
std::vector<Input> with_loss(std::vector<Input> before, const BossRun& one, Temperature at,
                             const std::vector<Input>& after) {
    const std::vector<Input> loss{
        convection(),    {"A", one.boss.surface.value(), "m2"},    {"G", one.boss.sink.value(), "W/K"},
        kelvin("T", at), kelvin("T_a", one.settings.boss.ambient), emissivity(),
        radiation()};
    before.insert(before.end(), loss.begin(), loss.end());
    before.insert(before.end(), after.begin(), after.end());
    return before;
}

std::vector<Working> mass_working(const WornBore& bore, const Build& build, const HeatBalance& balance) {
    const Input rho{"rho", in_kg_m3(balance.metal.density)};
    const Input diameter{"D", in_mm(*bore.boss_diameter)};
    const Boss& cold = balance.cold().boss;
    std::vector<double> plates;
    for (const Length& plate : balance.cold().plates)
        plates.push_back(mm(plate));
    const Input mass{"m", in_kg(balance.hot.boss.mass)};
    return {worked("boss_kg", "rho*pi*((D/2)^2 - r_s^2)*L*1e-9",
                   {rho, diameter, {"r_s", in_mm(build.skim_radius)}, {"L", in_mm(bore.length)}},
                   in_kg(balance.hot.boss.mass)),
            plates.empty() ? worked("heated_kg", "1*m", {mass}, in_kg(cold.heated))
                           : worked("heated_kg", "m + sum(rho*pi*((D/2 + z)^2 - (D/2)^2)*t)*1e-9",
                                    {mass, rho, diameter, {"z", in_mm(warmed_ring)}, {"t", plates, "mm"}},
                                    in_kg(cold.heated), "ISO13916")};
}

Working biot_working(const HeatBalance& balance) {
    return worked("biot", "(h_c + eps*sigma*(T^2 + T_a^2)*(T + T_a))*m/(rho*A*lambda)",
                  {convection(),
                   emissivity(),
                   radiation(),
                   kelvin("T", balance.hot.settings.maximum),
                   kelvin("T_a", balance.ambient),
                   {"m", in_kg(balance.hot.boss.mass)},
                   {"rho", in_kg_m3(balance.metal.density)},
                   {"A", balance.hot.boss.surface.value(), "m2"},
                   {"lambda", balance.metal.conductivity.value(), "W/(m K)"}},
                  balance.biot);
}

std::vector<Working> heater_working(const HeatBalance& balance) {
    const BossRun& cold = balance.cold();
    const Input power{"P", in_kw(balance.heater.power)};
    const Input eta{"eta", balance.heater.efficiency};
    std::vector<Working> work{
        taken("heater_kw", power),
        worked("heater_needed_kw", "max((h_c*A + G)*(T - T_a) + eps*A*sigma*(T^4 - T_a^4), 0)/(1000*eta)",
               with_loss({}, cold, hardest_to_hold(balance), {eta}), in_kw(heater_needed(balance)))};
    if (balance.warms_up())
        work.push_back(worked("preheat_kj", "eta*P*t", {eta, power, {"t", in_seconds(cold.run.warm_up)}},
                              in_kj(cold.run.warm_up_heat)));
    if (cold.is_whole()) {
        std::vector<double> parts;
        for (const Energy& heat :
             {cold.run.warm_up_heat, cold.run.reheat_heat, cold.run.post_heat_heat, cold.run.slow_heat})
            parts.push_back(heat.value() / kilo);
        work.push_back(worked("heater_kj", "sum(E)", {{"E", parts, "kJ"}}, in_kj(balance.heater_heat())));
    }
    return work;
}

/// The lump takes one direction from one limit to the next, so that its peak lies where two steps meet.
Working peak_working(const HeatBalance& balance) {
    std::vector<double> all;
    for (const HeatRun* run : {&balance.hot.run, &balance.cold().run}) {
        all.push_back(deg_c(run->curve.front().temperature));
        for (const HeatStep& step : run->steps)
            all.push_back(deg_c(step.to));
    }
    return worked("peak_degC", "highest(T)", {{"T", all, "degC"}}, in_deg_c(balance.peak()));
}

/// dT/dt as the first ring is laid.
Working curve_working(const BossRun& one) {
    const ThermalLump& lump = one.settings.boss;
    const Temperature at = std::max(one.settings.minimum, lump.ambient);
    const double c = lump.metal.specific_heat(at).value();
    return worked("curve", "(P - (h_c*A + G)*(T - T_a) - eps*A*sigma*(T^4 - T_a^4))/(m*c)",
                  with_loss({{"P", one.settings.arc.value(), "W"}}, one, at,
                            {{"m", in_kg(lump.mass)}, {"c", c, "J/(kg K)"}}),
                  {(one.settings.arc - heat_loss(lump, at)).value() / (lump.mass.value() * c), "K/s"},
                  lump.metal.source);
}

Working summed(std::string figure, std::vector<double> times, Time value) {
    return worked(std::move(figure), "sum(t)", {{"t", std::move(times), "s"}}, in_seconds(value));
}

/// The longer time of both runs.
Working longer(std::string figure, const HeatBalance& balance, Time hot, Time cold) {
    std::vector<double> times{hot.value()};
    if (balance.plated)
        times.push_back(cold.value());
    return worked(std::move(figure), "highest(t)", {{"t", times, "s"}}, in_seconds(std::max(hot, cold)));
}

std::vector<Working> time_working(const HeatBalance& balance, Time arc) {
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    std::vector<Working> work{summed("arc_s", {arc.value()}, arc)};
    if (balance.warms_up())
        work.push_back(summed("preheat_s", {cold.warm_up.value()}, cold.warm_up));
    if (balance.hot.is_whole()) {
        work.push_back(taken("stops", {"n", hot.stops}));
        work.push_back(summed("wait_s", step_times(hot, HeatStage::stop), hot.waiting));
    }
    if (balance.plated && balance.plated->is_whole())
        work.push_back(summed("wait_low_s", step_times(cold, HeatStage::stop), cold.waiting));
    if (balance.cold().is_whole()) {
        work.push_back(taken("reheats", {"n", cold.reheats}));
        work.push_back(summed("reheat_s", step_times(cold, HeatStage::reheat), cold.reheating));
    }
    if (balance.hot.is_whole() && balance.cold().is_whole())
        work.push_back(longer("post_heat_s", balance, hot.post_heating, cold.post_heating));
    if (longest(balance, &HeatRun::cooling_to_rough))
        work.push_back(longer("cool_to_rough_s", balance, *hot.cooling_to_rough, *cold.cooling_to_rough));
    if (longest(balance, &HeatRun::cooling_to_finish))
        work.push_back(longer("cool_to_finish_s", balance, *hot.cooling_to_finish, *cold.cooling_to_finish));
    if (const auto total = total_time(balance, arc)) {
        std::vector<double> parts{cold.warm_up.value(), arc.value(), hot.waiting.value(),
                                  cold.reheating.value()};
        for (std::size_t i = work.size() - 3; i < work.size(); ++i)
            parts.push_back(work[i].value); // the hold and both coolings
        work.push_back(summed("total_s", parts, *total));
    }
    return work;
}

} // namespace

std::vector<double> step_times(const HeatRun& run, HeatStage stage) {
    std::vector<double> times;
    for (const HeatStep& step : run.steps)
        if (step.stage == stage)
            times.push_back(step.time.value());
    return times;
}

std::optional<Time> longest(const HeatBalance& balance, std::optional<Time> HeatRun::*stage) {
    const auto& hot = balance.hot.run.*stage;
    const auto& cold = balance.cold().run.*stage;
    return hot && cold ? std::optional(std::max(*hot, *cold)) : std::nullopt;
}

std::optional<Time> total_time(const HeatBalance& balance, Time arc) {
    if (end_of(balance) != BalanceEnd::done)
        return std::nullopt;
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    return cold.warm_up + arc + hot.waiting + cold.reheating + std::max(hot.post_heating, cold.post_heating) +
           *longest(balance, &HeatRun::cooling_to_rough) + *longest(balance, &HeatRun::cooling_to_finish);
}

std::vector<Working> balance_working(const WornBore& bore, const Build& build, Time arc,
                                     const HeatBalance& balance) {
    std::vector<Working> heat = mass_working(bore, build, balance);
    heat.push_back(biot_working(balance));
    append(heat, heater_working(balance));
    if (balance.hot.is_whole())
        heat.push_back(peak_working(balance));
    std::vector<Working> work = under("heat", std::move(heat));
    std::vector<Working> time = time_working(balance, arc);
    time.push_back(curve_working(balance.hot));
    append(work, under("time", std::move(time)));
    return work;
}

} // namespace ringfill
