#include <ringfill/report/text/time_text.hpp>

#include <tuple>

#include <fmt/format.h>

#include <ringfill/say/time_sentences.hpp>

namespace ringfill {
namespace {

/// A list of more steps is told by its ends.
constexpr std::size_t longest_list = 40;
constexpr std::size_t kept_at_begin = 24;
constexpr std::size_t kept_at_end = 8;

std::string step_list(const HeatRun& run, UnitSystem units) {
    if (run.steps.empty())
        return fmt::format("    nothing: it does not come to {}\n", show_minimum(run.end_at, units));
    Rows rows;
    for (const HeatStep& step : run.steps)
        rows.push_back({std::string(word_of(step.stage)), place_of(step), show(step.time),
                        fmt::format("{} to {}", show(step.from, units),
                                    step.stage == HeatStage::warm_up ? show_minimum(step.to, units)
                                                                     : show(step.to, units))});
    const auto lines = columns(rows, {false, false, true, true});
    std::string text;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (lines.size() > longest_list && i == kept_at_begin) {
            i = lines.size() - kept_at_end;
            text += wrapped(left_out(run, kept_at_begin, i), "    ");
        }
        text += fmt::format("    {}\n", lines[i]);
    }
    return text;
}

} // namespace

std::string time_text(const BorePlan& bore, UnitSystem units, bool with_curve) {
    if (!bore.heat_balance)
        return {};
    const auto& [hot, plated] = std::tie(bore.heat_balance->hot, bore.heat_balance->plated);
    std::string text = wrapped(time_sentences(*bore.heat_balance, bore.metal.arc, units));
    if (plated)
        text += wrapped("The job does not say what carries heat off the boss. With nothing that does, which "
                        "asks for the longest waits:");
    text += step_list(hot.run, units);
    if (plated)
        text += wrapped(fmt::format("With one plate of {} on it, which asks for the most heat:",
                                    show(plated->plates.front(), units))) +
                step_list(plated->run, units);
    if (with_curve && plated)
        text += wrapped("The curve with nothing that carries heat off:");
    return with_curve ? text + curve_plot(hot, units) : text;
}

} // namespace ringfill
