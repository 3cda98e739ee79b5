#include <ringfill/heat/heat_balance.hpp>

#include <algorithm>

namespace ringfill {
namespace {

Input kelvin(std::string symbol, Temperature temperature) {
    return {std::move(symbol), temperature.value(), "K"};
}
Amount in_kj(Energy energy) {
    return {energy.value() / 1e3, "kJ"};
}

/// What loss and content of the boss hang on.
std::vector<Input> common_inputs(const WornBore& bore, const Build& build, const HeatBalance& balance) {
    const Boss& boss = balance.hot.boss;
    return inputs_of(
        Input("h_c", still_air_W_m2K, "W/(m2 K)"), Input("eps", scaled_emissivity),
        Input("sigma", stefan_boltzmann, "W/(m2 K4)"), kelvin("T_a", balance.ambient),
        Input("A", boss.surface.value(), "m2"), in_kg("m", boss.mass), in_kg_m3("rho", balance.metal.density),
        Input("lambda", balance.metal.conductivity.value(), "W/(m K)"), in_mm("D", *bore.boss_diameter),
        in_mm("r_s", build.skim_radius), in_mm("L", bore.length));
}

std::vector<Working> boss_working(const HeatBalance& balance, const std::vector<Input>& common) {
    std::vector<double> plates;
    for (const Length& plate : balance.cold().plates)
        plates.push_back(mm(plate));
    const bool alone = plates.empty();
    const Boss& cold_boss = balance.cold().boss;
    const bool whole = cold_boss.part > Mass() && cold_boss.heated == cold_boss.part;
    const char* heated = whole   ? "1*m_part"
                         : alone ? "1*m"
                                 : "m + sum(rho*pi*((D/2 + z)^2 - (D/2)^2)*t)*1e-9";
    return worked(inputs_of(in_mm("z", warmed_ring), Input("t", plates, "mm"),
                            in_kg("m_part", cold_boss.part), kelvin("T", balance.hot.settings.maximum)),
                  {{"boss_kg", "rho*pi*((D/2)^2 - r_s^2)*L*1e-9", in_kg(balance.hot.boss.mass)},
                   {"heated_kg", heated, in_kg(cold_boss.heated),
                    whole   ? "job"
                    : alone ? "own"
                            : "ISO13916"},
                   {"biot", "(h_c + eps*sigma*(T^2 + T_a^2)*(T + T_a))*m/(rho*A*lambda)", balance.biot}},
                  common);
}

std::vector<Working> heater_working(const HeatBalance& balance, const std::vector<Input>& common) {
    const BossRun& cold = balance.cold();
    const Amount power{balance.heater.power.value() / 1e3, "kW"};
    std::vector<double> parts;
    for (const Energy& heat :
         {cold.run.warm_up_heat, cold.run.reheat_heat, cold.run.post_heat_heat, cold.run.slow_heat})
        parts.push_back(in_kj(heat).value);
    return worked(inputs_of(Input("P", power), Input("eta", balance.heater.efficiency),
                            Input("G", cold.boss.sink.value(), "W/K"), kelvin("T", hardest_to_hold(balance)),
                            in_seconds("t", cold.run.warm_up), Input("E", parts, "kJ")),
                  {{"heater_kw", "1*P", power},
                   {"heater_needed_kw",
                    "max((h_c*A + G)*(T - T_a) + eps*A*sigma*(T^4 - T_a^4), 0)/(1000*eta)",
                    {heater_needed(balance).value() / 1e3, "kW"}},
                   {"preheat_kj", balance.warms_up() ? "eta*P*t" : "", in_kj(cold.run.warm_up_heat)},
                   {"heater_kj", cold.is_whole() ? "sum(E)" : "", in_kj(balance.heater_heat())}},
                  common);
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
std::vector<Working> curve_working(const BossRun& boss_run, const std::vector<Input>& common) {
    const ThermalLump& lump = boss_run.settings.boss;
    const Temperature at = std::max(boss_run.settings.minimum, lump.ambient);
    const double c = lump.metal.specific_heat(at).value();
    const Power gain = boss_run.settings.arc - heat_loss(lump, at);
    return worked(inputs_of(Input("P", boss_run.settings.arc.value(), "W"),
                            Input("G", boss_run.boss.sink.value(), "W/K"), kelvin("T", at),
                            Input("c", c, "J/(kg K)")),
                  {{"curve",
                    "(P - (h_c*A + G)*(T - T_a) - eps*A*sigma*(T^4 - T_a^4))/(m*c)",
                    {gain.value() / (lump.mass.value() * c), "K/s"},
                    lump.metal.source}},
                  common);
}

std::vector<double> step_times(const HeatRun& run, HeatStage stage) {
    std::vector<double> times;
    for (const HeatStep& step : run.steps)
        if (step.stage == stage)
            times.push_back(step.time.value());
    return times;
}

std::vector<Working> time_working(const HeatBalance& balance, Time arc) {
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    std::vector<Working> work;
    const auto sum = [&](const char* figure, const std::vector<double>& times, Time value) {
        work.push_back(worked(figure, "sum(t)", {{"t", times, "s"}}, in_seconds(value)));
    };
    std::vector<double> parts{cold.warm_up.value(), arc.value(), hot.waiting.value(), cold.reheating.value()};
    const auto longer = [&](const char* figure, Time in_hot, Time in_cold) {
        std::vector<double> times{in_hot.value()};
        if (balance.plated)
            times.push_back(in_cold.value());
        const Time value = std::max(in_hot, in_cold);
        work.push_back(worked(figure, "highest(t)", {{"t", times, "s"}}, in_seconds(value)));
        parts.push_back(value.value());
    };
    sum("arc_s", {arc.value()}, arc);
    if (balance.warms_up())
        sum("preheat_s", {cold.warm_up.value()}, cold.warm_up);
    if (balance.hot.is_whole()) {
        work.push_back(taken("stops", {"n", hot.stops}));
        sum("wait_s", step_times(hot, HeatStage::stop), hot.waiting);
    }
    if (balance.plated && balance.plated->is_whole())
        sum("wait_low_s", step_times(cold, HeatStage::stop), cold.waiting);
    if (balance.cold().is_whole()) {
        work.push_back(taken("reheats", {"n", cold.reheats}));
        sum("reheat_s", step_times(cold, HeatStage::reheat), cold.reheating);
    }
    if (balance.hot.is_whole() && balance.cold().is_whole())
        longer("post_heat_s", hot.post_heating, cold.post_heating);
    if (longest(balance, &HeatRun::cooling_to_rough))
        longer("cool_to_rough_s", *hot.cooling_to_rough, *cold.cooling_to_rough);
    if (longest(balance, &HeatRun::cooling_to_finish))
        longer("cool_to_finish_s", *hot.cooling_to_finish, *cold.cooling_to_finish);
    if (const auto total = total_time(balance, arc))
        sum("total_s", parts, *total);
    return work;
}

} // namespace

std::vector<Working> balance_working(const WornBore& bore, const BoreWeld& weld, const HeatBalance& balance) {
    const std::vector<Input> common = common_inputs(bore, weld.build, balance);
    std::vector<Working> heat = boss_working(balance, common);
    append(heat, heater_working(balance, common));
    if (balance.hot.is_whole())
        heat.push_back(peak_working(balance));
    std::vector<Working> work = under("heat", std::move(heat));
    std::vector<Working> time = time_working(balance, weld.metal.arc);
    append(time, curve_working(balance.hot, common));
    append(work, under("time", std::move(time)));
    return work;
}

} // namespace ringfill
