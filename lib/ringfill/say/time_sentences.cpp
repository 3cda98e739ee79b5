#include <ringfill/say/time_sentences.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <ringfill/heat/heat_balance.hpp>

namespace ringfill {
namespace {

std::string stops_in_words(const HeatBalance& balance) {
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    if (hot.stops == 0)
        return "no stop";
    std::string text = fmt::format("{}, {} together", counted(hot.stops, "stop"), show(hot.waiting));
    if (balance.plated)
        text += fmt::format(" at most (with the plate {})",
                            cold.stops == 0 ? std::string("none")
                                            : fmt::format("{}, {} together", cold.stops, show(cold.waiting)));
    return text;
}

std::string reheats_in_words(const HeatBalance& balance) {
    const HeatRun& cold = balance.cold().run;
    if (cold.reheats == 0)
        return "no reheat";
    return fmt::format("{}, {} together{}", counted(cold.reheats, "reheat"), show(cold.reheating),
                       balance.plated ? " at most" : "");
}

std::string sum_of_it(const BorePlan& bore, UnitSystem units) {
    const HeatBalance& balance = *bore.heat_balance;
    const HeatRun& cold = balance.cold().run;
    if (!balance.hot.is_whole() || !balance.cold().is_whole())
        return fmt::format("No time can be given: {}. What follows is as far as it goes.",
                           words_of(end_of(balance)));
    std::string text = fmt::format("Time of one: warm-up {}, arc {}, {}, {}", show(cold.warm_up),
                                   show(bore.metal.arc), stops_in_words(balance), reheats_in_words(balance));
    if (const Time hold = std::max(balance.hot.run.post_heating, cold.post_heating); hold > Time())
        text += fmt::format(", hold {}", show(hold));
    if (const auto rough = longest(balance, &HeatRun::cooling_to_rough))
        text += fmt::format(", {} to {} for roughing", show(*rough),
                            show(balance.hot.settings.rough_below, units));
    if (const auto finish = longest(balance, &HeatRun::cooling_to_finish))
        text += fmt::format(", {} more to {} for finishing", show(*finish),
                            show(balance.hot.settings.finish_below, units));
    if (const auto total = total_time(balance, bore.metal.arc))
        text += fmt::format("; {} in all", show(*total));
    else
        text += fmt::format("; it does not end well: {}", words_of(end_of(balance)));
    return text + ".";
}

std::string heater_in_words(const HeatBalance& balance, UnitSystem units) {
    return fmt::format(
        "Reckoned with a boss of {}{}; {} of {:.3g} kW, {:.3g} % of it into the metal (needs over {:.1f} "
        "kW); air "
        "of {}{}.",
        show(balance.hot.boss.mass, units),
        balance.cold().boss.heated > balance.cold().boss.mass
            ? fmt::format(", {} with what stands on it and is warmed along",
                          show(balance.cold().boss.heated, units))
            : std::string(),
        balance.heater.kind, balance.heater.power.value() / 1e3, 100 * balance.heater.efficiency,
        std::ceil(heater_needed(balance).value() / 100 - 1e-9) / 10, show(balance.ambient, units),
        balance.hot.is_whole() ? fmt::format("; peak {}", show(balance.peak(), units)) : std::string());
}

} // namespace

std::string counted(int count, std::string_view thing) {
    return fmt::format("{} {}{}", count, thing, count == 1 ? "" : "s");
}

std::string_view step_name(HeatStage stage) {
    switch (stage) {
    case HeatStage::warm_up:
        return "warm-up";
    case HeatStage::weld:
        return "weld";
    case HeatStage::stop:
        return "stop";
    case HeatStage::reheat:
        return "reheat";
    case HeatStage::post_heat:
        return "post-heat";
    case HeatStage::cool_to_rough:
        return "cool to rough";
    case HeatStage::cool_to_finish:
        break;
    }
    return "cool to finish";
}

std::string place_of(const HeatStep& step) {
    if (step.pass.empty())
        return {};
    if (step.after_ring == 0)
        return fmt::format("before {} layer {}", step.pass, step.layer);
    return fmt::format("{} {} layer {} ring {}", step.stage == HeatStage::weld ? "to" : "after", step.pass,
                       step.layer, step.after_ring);
}

std::string left_out(const HeatRun& run, std::size_t begin, std::size_t end) {
    int stops = 0;
    int reheats = 0;
    for (std::size_t i = begin; i < end; ++i) {
        stops += run.steps[i].stage == HeatStage::stop ? 1 : 0;
        reheats += run.steps[i].stage == HeatStage::reheat ? 1 : 0;
    }
    return fmt::format("… {} steps more, {} and {} among them; the result file has them all", end - begin,
                       counted(stops, "stop"), counted(reheats, "reheat"));
}

Sentences time_sentences(const BorePlan& bore, UnitSystem units) {
    if (!bore.heat_balance)
        return {};
    return {{sum_of_it(bore, units)}, {heater_in_words(*bore.heat_balance, units)}};
}

} // namespace ringfill
