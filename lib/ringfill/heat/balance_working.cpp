#include <ringfill/heat/heat_balance.hpp>

#include <algorithm>

#include <ringfill/fault/place.hpp>

namespace ringfill {
namespace {

Amount in_kj(Energy energy) {
    return {energy.value() / 1e3, "kJ"};
}

Amount in_kw(Power power) {
    return {power.value() / 1e3, "kW"};
}

std::vector<Working> boss_working(const WornBore& bore, const Build& build, const HeatBalance& balance) {
    return worked(inputs_of(in_kg_m3("rho", balance.metal.density), in_mm("D", *bore.boss_diameter),
                            in_mm("r_s", build.skim_radius), in_mm("L", bore.length)),
                  {{"boss_kg", "rho*pi*((D/2)^2 - r_s^2)*L*1e-9", in_kg(balance.cold().run.boss)}});
}

std::vector<Working> heater_working(const HeatBalance& balance) {
    const BossRun& cold = balance.cold();
    const HeatRun& run = cold.run;
    const Amount power = in_kw(balance.heater.power);
    std::vector<double> parts;
    for (const Energy& heat : {run.warm_up_heat, run.reheat_heat, run.post_heat_heat, run.cooling().heat})
        parts.push_back(in_kj(heat).value);
    const Power lost = balance.heater.efficiency * heater_needed(balance);
    std::vector<Working> work = worked(
        inputs_of(Input("P", power), Input("eta", balance.heater.efficiency),
                  in_seconds("t", run.warm_up.heating), Input("E", parts, "kJ"), Input("P_out", in_kw(lost))),
        {{"heater_kw", "1*P", power},
         {"heater_needed_kw", "P_out/eta", in_kw(heater_needed(balance))},
         {"heater_kj", cold.is_whole() ? "sum(E)" : "", in_kj(balance.heater_heat())}});
    if (balance.warms_up())
        work.push_back(cold.settings.heating_max_K_per_h
                           ? taken("preheat_kj", {"E", in_kj(run.warm_up_heat)}) // by less than full power
                           : worked("preheat_kj", "eta*P*t",
                                    inputs_of(Input("eta", balance.heater.efficiency), Input("P", power),
                                              in_seconds("t", run.warm_up.heating)),
                                    in_kj(run.warm_up_heat)));
    if (run.held) {
        work.push_back(taken("held_duty", {"u", run.held->duty}));
        work.push_back(taken("held_kw", {"P", in_kw(run.held->mean)}));
    }
    return work;
}

std::vector<Working> hottest_working(const HeatBalance& balance) {
    std::vector<double> all{deg_c(balance.ambient)};
    for (const HeatRun* run : {&balance.hot.run, &balance.cold().run})
        for (const Temperature& at : {run->peak, run->warm_up.skin})
            all.push_back(deg_c(at));
    const HeatRun& hot = balance.hot.run;
    const double start = deg_c(hot.hottest_start);
    return {worked("peak_degC", "highest(T)", {{"T", all, "degC"}}, in_deg_c(balance.peak())),
            worked("hottest_start_degC", "T_band + X",
                   inputs_of(Input("T_band", start - hot.start_excess_K, "degC"),
                             Input("X", hot.start_excess_K, "K")),
                   in_deg_c(hot.hottest_start))};
}

/// dT/dt of the mean of the boss as the first ring is laid: what the heat equation says of the whole.
Working curve_working(const BossRun& boss_run) {
    const HeatRun& run = boss_run.run;
    const double rate =
        run.begin_capacity > 0 ? (boss_run.settings.arc - run.begin_loss).value() / run.begin_capacity : 0;
    return worked("curve", run.begin_capacity > 0 ? "(P - P_out)/C" : "0*(P - P_out + C)",
                  inputs_of(Input("P", boss_run.settings.arc.value(), "W"),
                            Input("P_out", run.begin_loss.value(), "W"),
                            Input("C", run.begin_capacity, "J/K")),
                  {rate, "K/s"}, boss_run.settings.metal.source);
}

std::vector<double> step_times(const HeatRun& run, HeatStage stage) {
    std::vector<double> times;
    for (const HeatStep& step : run.steps)
        if (step.stage == stage)
            times.push_back(step.time.value());
    return times;
}

/// Adds up times, figure by figure.
class TimeWorking {
  public:
    explicit TimeWorking(const HeatBalance& balance) : plated_(balance.plated.has_value()) {}

    void sum(const char* figure, const std::vector<double>& times, Time value) {
        work_.push_back(worked(figure, "sum(t)", {{"t", times, "s"}}, in_seconds(value)));
    }
    void take(const char* figure, Time value) { work_.push_back(taken(figure, {"t", in_seconds(value)})); }
    void count(const char* figure, int value) { work_.push_back(taken(figure, {"n", value})); }

    /// The longer of both runs; counts in the whole.
    void longer(const char* figure, Time in_hot, Time in_cold) {
        std::vector<double> times{in_hot.value()};
        if (plated_)
            times.push_back(in_cold.value());
        const Time value = std::max(in_hot, in_cold);
        work_.push_back(worked(figure, "highest(t)", {{"t", times, "s"}}, in_seconds(value)));
        parts_.push_back(value.value());
    }
    void part(Time value) { parts_.push_back(value.value()); }
    void total(Time value) { sum("total_s", parts_, value); }

    std::vector<Working> work() && { return std::move(work_); }

  private:
    bool plated_;
    std::vector<double> parts_ = {};
    std::vector<Working> work_ = {};
};

/// The ways of cooling beside the one that is counted.
void add_coolings(TimeWorking& work, const HeatRun& run) {
    const auto add = [&](const char* rough, const char* finish, const BossCooling& cooling) {
        if (cooling.to_rough)
            work.take(rough, *cooling.to_rough);
        if (cooling.to_finish)
            work.take(finish, *cooling.to_finish);
    };
    add("cooling.bare.to_rough_s", "cooling.bare.to_finish_s", run.bare);
    add("cooling.wrapped.to_rough_s", "cooling.wrapped.to_finish_s", run.wrapped);
    if (run.wrapped_with_plates)
        add("cooling.wrapped_with_plates.to_rough_s", "cooling.wrapped_with_plates.to_finish_s",
            *run.wrapped_with_plates);
}

/// A dwell is the longest pause of its rings, rounded up to 5 s.
std::vector<Working> dwell_working(const HeatRun& run) {
    std::vector<Working> work;
    for (std::size_t i = 0; i < run.dwells.size(); ++i) {
        const ToldDwell& dwell = run.dwells[i];
        append(work,
               under(element_path("dwells", i),
                     {taken("from_ring", {"n", dwell.from_ring}), taken("to_ring", {"n", dwell.to_ring}),
                      worked("s", "5*ceil(t/5 - 1e-6)", {in_seconds("t", dwell.longest)},
                             in_seconds(dwell.told))}));
    }
    return work;
}

std::vector<Working> time_working(const HeatBalance& balance, Time arc) {
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    TimeWorking work(balance);
    for (const Time& part :
         {cold.warm_up.time, cold.delay, arc, hot.told_pausing, hot.resting, cold.reheating})
        work.part(part);
    work.sum("arc_s", {arc.value()}, arc);
    if (balance.warms_up()) {
        work.take("preheat_s", cold.warm_up.time);
        work.take("heating_s", cold.warm_up.heating);
        work.take("delay_s", cold.delay);
    }
    if (balance.hot.is_whole()) {
        if (hot.stitches > 0)
            work.count("stitches", hot.stitches);
        work.count("rests", hot.rests);
        work.sum("rest_s", step_times(hot, HeatStage::rest), hot.resting);
        work.take("pause_s", hot.pausing);
        std::vector<double> told;
        for (const HeatStep& step : hot.steps)
            told.push_back(step.told.value());
        work.sum("told_pause_s", told, hot.told_pausing);
        add_coolings(work, hot);
    }
    if (balance.plated && balance.plated->is_whole())
        work.sum("rest_low_s", step_times(cold, HeatStage::rest), cold.resting);
    if (balance.cold().is_whole()) {
        work.count("reheats", cold.reheats);
        work.sum("reheat_s", step_times(cold, HeatStage::reheat), cold.reheating);
    }
    if (balance.hot.is_whole() && balance.cold().is_whole())
        work.longer("post_heat_s", hot.post_heating, cold.post_heating);
    if (longest_cooling(balance, &BossCooling::to_rough))
        work.longer("cool_to_rough_s", *hot.cooling().to_rough, *cold.cooling().to_rough);
    if (longest_cooling(balance, &BossCooling::to_finish))
        work.longer("cool_to_finish_s", *hot.cooling().to_finish, *cold.cooling().to_finish);
    if (const auto total = total_time(balance, arc))
        work.total(*total);
    return std::move(work).work();
}

} // namespace

std::vector<Working> balance_working(const WornBore& bore, const BoreWeld& weld, const HeatBalance& balance) {
    std::vector<Working> heat = boss_working(bore, weld.build, balance);
    append(heat, heater_working(balance));
    if (balance.hot.is_whole())
        append(heat, hottest_working(balance));
    std::vector<Working> work = under("heat", std::move(heat));
    std::vector<Working> time = time_working(balance, weld.metal.arc);
    append(time, dwell_working(balance.hot.run));
    time.push_back(curve_working(balance.hot));
    append(work, under("time", std::move(time)));
    return work;
}

} // namespace ringfill
