#include <ringfill/report/text/time_text.hpp>

#include <fmt/format.h>

#include <ringfill/report/text/layout.hpp>
#include <ringfill/say/time_sentences.hpp>

namespace ringfill {
namespace {

/// A list of more steps is told by its ends.
constexpr std::size_t longest_list = 40;
constexpr std::size_t kept_at_begin = 24;
constexpr std::size_t kept_at_end = 8;

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
