#include <ringfill/say/time_sentences.hpp>

#include <algorithm>
#include <cmath>
#include <span>

#include <fmt/format.h>

#include <range/v3/algorithm/count.hpp>

#include <ringfill/heat/heat_balance.hpp>

namespace ringfill {
namespace {

/// "2 stops, 12 min together", or "no stop".
std::string together(int count, std::string_view one, Time time) {
    return count == 0 ? fmt::format("no {}", one)
                      : fmt::format("{}, {} together", counted(count, one), show(time));
}

std::string stops_in_words(const HeatBalance& balance) {
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    const std::string text = together(hot.stops, "stop", hot.waiting);
    if (hot.stops == 0 || !balance.plated)
        return text;
    return fmt::format("{} at most (with the plate {})", text,
                       cold.stops == 0 ? "none"
                                       : fmt::format("{}, {} together", cold.stops, show(cold.waiting)));
}

std::string sum_of_it(const HeatBalance& balance, Time arc, UnitSystem units) {
    const HeatRun& cold = balance.cold().run;
    const HeatRunSettings& settings = balance.hot.settings;
    if (!balance.hot.is_whole() || !balance.cold().is_whole())
        return fmt::format("No time can be given: {}. What follows is as far as it goes.",
                           word_of(end_of(balance)));
    const Time hold = std::max(balance.hot.run.post_heating, cold.post_heating);
    const auto rough = longest(balance, &HeatRun::cooling_to_rough);
    const auto finish = longest(balance, &HeatRun::cooling_to_finish);
    const auto total = total_time(balance, arc);
    return fmt::format(
        "Time of one: warm-up {}, arc {}, {}, {}{}{}{}{}; {}.", show(cold.warm_up), show(arc),
        stops_in_words(balance), together(cold.reheats, "reheat", cold.reheating),
        cold.reheats > 0 && balance.plated ? " at most" : "",
        hold > Time() ? fmt::format(", hold {}", show(hold)) : "",
        rough ? fmt::format(", {} to {} for roughing", show(*rough), show(settings.rough_below, units)) : "",
        finish
            ? fmt::format(", {} more to {} for finishing", show(*finish), show(settings.finish_below, units))
            : "",
        total ? fmt::format("{} in all", show(*total))
              : fmt::format("it does not end well: {}", word_of(end_of(balance))));
}

std::string heater_in_words(const HeatBalance& balance, UnitSystem units) {
    const Boss& boss = balance.cold().boss;
    return fmt::format(
        "Worked out with a boss of {}{}; {} of {:.3g} kW, {:.3g} % of it into the metal (needs over {:.1f} "
        "kW); air of {}{}.",
        show(balance.hot.boss.mass, units),
        boss.heated > boss.mass
            ? fmt::format(", {} with what stands on it and is warmed along", show(boss.heated, units))
            : "",
        balance.heater.kind, balance.heater.power.value() / 1e3, 100 * balance.heater.efficiency,
        std::ceil(heater_needed(balance).value() / 100 - 1e-9) / 10, show(balance.ambient, units),
        balance.hot.is_whole() ? fmt::format("; peak {}", show(balance.peak(), units)) : "");
}

} // namespace

std::string counted(std::int64_t count, std::string_view thing) {
    return fmt::format("{} {}{}", count, thing, count == 1 ? "" : "s");
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
    const std::span<const HeatStep> steps(run.steps.data() + begin, end - begin);
    const auto count = [&](HeatStage stage) { return ranges::count(steps, stage, &HeatStep::stage); };
    return fmt::format("… {} steps more, {} and {} among them; the result file has them all", end - begin,
                       counted(count(HeatStage::stop), "stop"), counted(count(HeatStage::reheat), "reheat"));
}

Sentences time_sentences(const HeatBalance& balance, Time arc, UnitSystem units) {
    return {{sum_of_it(balance, arc, units)}, {heater_in_words(balance, units)}};
}

} // namespace ringfill
