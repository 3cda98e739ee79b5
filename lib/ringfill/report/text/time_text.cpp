#include <ringfill/report/text/time_text.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <ringfill/heat/balance_working.hpp>
#include <ringfill/report/text/columns.hpp>
#include <ringfill/report/text/curve_plot.hpp>
#include <ringfill/say/heat_steps.hpp>

namespace ringfill {
namespace {

/// A list of more steps is told by its ends.
constexpr std::size_t longest_list = 40;
constexpr std::size_t kept_at_begin = 24;
constexpr std::size_t kept_at_end = 8;

std::string counted(int count, std::string_view one) {
    return fmt::format("{} {}{}", count, one, count == 1 ? "" : "s");
}

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

std::vector<std::string> step_lines(const HeatRun& run, UnitSystem units) {
    std::vector<std::vector<std::string>> rows;
    for (const HeatStep& step : run.steps)
        rows.push_back(
            {std::string(step_name(step.stage)), place_of(step), show(step.time), show(step.from, units),
             "to", step.stage == HeatStage::warm_up ? show_minimum(step.to, units) : show(step.to, units)});
    return columns(rows, {false, false, true, true, false, true});
}

std::string step_list(const HeatRun& run, UnitSystem units) {
    if (run.steps.empty())
        return fmt::format("    nothing: it does not come to {}\n", show_minimum(run.end_at, units));
    std::string text;
    const auto lines = step_lines(run, units);
    const bool whole = lines.size() <= longest_list;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!whole && i == kept_at_begin) {
            const std::size_t end = lines.size() - kept_at_end;
            text += wrapped(left_out(run, i, end), "    ");
            i = end;
        }
        text += fmt::format("    {}\n", lines[i]);
    }
    return text;
}

} // namespace

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

std::string time_text(const BorePlan& bore, UnitSystem units) {
    if (!bore.heat_balance)
        return {};
    const HeatBalance& balance = *bore.heat_balance;
    std::string text = wrapped(time_sentences(bore, units));
    if (!balance.plated)
        return text + step_list(balance.hot.run, units);
    text += wrapped("The job does not say what carries heat off the boss. With nothing that does, which asks "
                    "for the most stops:",
                    "  ");
    text += step_list(balance.hot.run, units);
    text += wrapped(fmt::format("With one plate of {} on it, which asks for the most heat:",
                                show(balance.plated->plates.front(), units)),
                    "  ");
    return text + step_list(balance.plated->run, units);
}

std::string time_and_curve(const BorePlan& bore, UnitSystem units) {
    if (!bore.heat_balance)
        return {};
    return time_text(bore, units) +
           (bore.heat_balance->plated ? wrapped("The curve with nothing that carries heat off:", "  ")
                                      : std::string()) +
           curve_plot(bore.heat_balance->hot, units);
}

} // namespace ringfill
