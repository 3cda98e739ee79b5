#include <ringfill/heat/balance_working.hpp>

#include <algorithm>

#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double kilo = 1e3;

Input sigma() {
    return {"sigma", stefan_boltzmann, "W/(m2 K4)"};
}

std::vector<Working> mass_working(const WornBore& bore, const Build& build, const HeatBalance& balance) {
    const Input rho{"rho", balance.metal.density.value(), "kg/m3"};
    const Input diameter{"D", mm(*bore.boss_diameter), "mm"};
    const BossRun& cold = balance.cold();
    std::vector<double> plates;
    for (const Length& plate : cold.plates)
        plates.push_back(mm(plate));
    const Input mass{"m", balance.hot.boss.mass.value(), "kg"};
    const double heated = cold.boss.heated.value();
    return {{"boss_kg",
             "rho*pi*((D/2)^2 - r_s^2)*L*1e-9",
             {rho, diameter, {"r_s", mm(build.skim_radius), "mm"}, {"L", mm(bore.length), "mm"}},
             balance.hot.boss.mass.value(),
             "kg",
             "own"},
            plates.empty() ? Working{"heated_kg", "1*m", {mass}, heated, "kg", "own"}
                           : Working{"heated_kg",
                                     "m + sum(rho*pi*((D/2 + z)^2 - (D/2)^2)*t)*1e-9",
                                     {mass, rho, diameter, {"z", mm(warmed_ring), "mm"}, {"t", plates, "mm"}},
                                     heated,
                                     "kg",
                                     "ISO13916"}};
}

Working biot_working(const HeatBalance& balance) {
    return {"biot",
            "(h_c + eps*sigma*(T^2 + T_a^2)*(T + T_a))*m/(rho*A*lambda)",
            {{"h_c", still_air_W_m2K, "W/(m2 K)"},
             {"eps", scaled_emissivity},
             sigma(),
             {"T", balance.hot.settings.maximum.value(), "K"},
             {"T_a", balance.ambient.value(), "K"},
             {"m", balance.hot.boss.mass.value(), "kg"},
             {"rho", balance.metal.density.value(), "kg/m3"},
             {"A", balance.hot.boss.surface.value(), "m2"},
             {"lambda", balance.metal.conductivity.value(), "W/(m K)"}},
            balance.biot,
            "",
            "own"};
}

std::vector<Working> heater_working(const HeatBalance& balance) {
    const BossRun& cold = balance.cold();
    const double power = balance.heater.power.value() / kilo;
    const Temperature hardest = hardest_to_hold(balance);
    const Input eta{"eta", balance.heater.efficiency};
    std::vector<Working> work{{"heater_kw", "1*P", {{"P", power, "kW"}}, power, "kW", "own"},
                              {"heater_needed_kw",
                               "max((h_c*A + G)*(T - T_a) + eps*A*sigma*(T^4 - T_a^4), 0)/(1000*eta)",
                               {{"h_c", still_air_W_m2K, "W/(m2 K)"},
                                {"A", cold.boss.surface.value(), "m2"},
                                {"G", cold.boss.sink.value(), "W/K"},
                                {"T", hardest.value(), "K"},
                                {"T_a", balance.ambient.value(), "K"},
                                {"eps", scaled_emissivity},
                                sigma(),
                                eta},
                               heater_needed(balance).value() / kilo,
                               "kW",
                               "own"}};
    const double warm = cold.run.warm_up_heat.value() / kilo;
    if (balance.warms_up())
        work.push_back({"preheat_kj",
                        "eta*P*t",
                        {eta, {"P", power, "kW"}, {"t", cold.run.warm_up.value(), "s"}},
                        warm,
                        "kJ",
                        "own"});
    if (cold.is_whole())
        work.push_back(
            {"heater_kj",
             "sum(E)",
             {{"E",
               std::vector<double>{warm, cold.run.reheat_heat.value() / kilo,
                                   cold.run.post_heat_heat.value() / kilo, cold.run.slow_heat.value() / kilo},
               "kJ"}},
             balance.heater_heat().value() / kilo,
             "kJ",
             "own"});
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
    return {"peak_degC", "highest(T)", {{"T", all, "degC"}}, deg_c(balance.peak()), "degC", "own"};
}

/// dT/dt as the first ring is laid.
Working curve_working(const BossRun& one) {
    const Temperature at = std::max(one.settings.minimum, one.settings.boss.ambient);
    const double c = one.settings.boss.metal.specific_heat(at).value();
    const double m = one.settings.boss.mass.value();
    const double slope = (one.settings.arc - heat_loss(one.settings.boss, at)).value() / (m * c);
    return {"curve",
            "(P - (h_c*A + G)*(T - T_a) - eps*A*sigma*(T^4 - T_a^4))/(m*c)",
            {{"P", one.settings.arc.value(), "W"},
             {"h_c", still_air_W_m2K, "W/(m2 K)"},
             {"A", one.boss.surface.value(), "m2"},
             {"G", one.boss.sink.value(), "W/K"},
             {"T", at.value(), "K"},
             {"T_a", one.settings.boss.ambient.value(), "K"},
             {"eps", scaled_emissivity},
             sigma(),
             {"m", m, "kg"},
             {"c", c, "J/(kg K)"}},
            slope,
            "K/s",
            one.settings.boss.metal.source};
}

Working summed(std::string figure, const std::vector<double>& times, double value) {
    return {std::move(figure), "sum(t)", {{"t", times, "s"}}, value, "s", "own"};
}

Working counted(std::string figure, int count) {
    return {std::move(figure),          "1*n", {{"n", static_cast<double>(count)}},
            static_cast<double>(count), "",    "own"};
}

/// The longer time of both runs.
Working longer(std::string figure, const HeatBalance& balance, Time hot, Time cold) {
    std::vector<double> times{hot.value()};
    if (balance.plated)
        times.push_back(cold.value());
    return {std::move(figure),
            "highest(t)",
            {{"t", times, "s"}},
            *std::max_element(times.begin(), times.end()),
            "s",
            "own"};
}

std::vector<Working> parts_working(const HeatBalance& balance, Time arc) {
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    std::vector<Working> work{summed("arc_s", {arc.value()}, arc.value())};
    if (balance.warms_up())
        work.push_back(summed("preheat_s", {cold.warm_up.value()}, cold.warm_up.value()));
    if (balance.hot.is_whole()) {
        work.push_back(counted("stops", hot.stops));
        work.push_back(summed("wait_s", step_times(hot, HeatStage::stop), hot.waiting.value()));
    }
    if (balance.plated && balance.plated->is_whole())
        work.push_back(summed("wait_low_s", step_times(cold, HeatStage::stop), cold.waiting.value()));
    if (balance.cold().is_whole()) {
        work.push_back(counted("reheats", cold.reheats));
        work.push_back(summed("reheat_s", step_times(cold, HeatStage::reheat), cold.reheating.value()));
    }
    return work;
}

std::vector<Working> time_working(const HeatBalance& balance, Time arc) {
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    std::vector<Working> work = parts_working(balance, arc);
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
        work.push_back(summed("total_s", parts, total->value()));
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
