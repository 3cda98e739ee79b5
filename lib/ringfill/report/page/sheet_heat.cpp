#include <fmt/format.h>

#include <ringfill/report/draw/drawings.hpp>
#include <ringfill/report/page/sheet_parts.hpp>
#include <ringfill/say/heat_sentences.hpp>
#include <ringfill/say/time_sentences.hpp>

namespace ringfill {
namespace {

/// The steps of a run in short. @param list its name in the result.
Markup steps(const SheetBore& bore, const HeatRun& run, const std::string& caption, const std::string& list) {
    if (run.steps.empty())
        return small_print(fmt::format("{}: nothing, it does not come to {}.", caption,
                                       show_minimum(run.end_at, bore.units)));
    PageTable table = table_of(caption, "steps", {"step", "where", "time", "from", "to"}, {2, 5});
    const auto step_row = [](const Part& in, const HeatStep& step, auto) {
        return row(in.text("step", std::string(word_of(step.stage))), place_of(step),
                   in.figure("s", step.time), in.figure("from_degC", step.from),
                   step.stage == HeatStage::warm_up
                       ? in.figure("to_degC", show_minimum(step.to, in.units), Shown::up)
                       : in.figure("to_degC", step.to));
    };
    const auto left_out_row = [&](std::size_t from, std::size_t before) {
        return row("…", element("span", left_out(run, from, before), {{"class", "told"}}), "", "", "");
    };
    return written(table.add_list(bore, list, run.steps, step_row, {20, 13, 6, left_out_row}));
}

Markup curve_and_steps(const SheetBore& bore) {
    const HeatBalance& balance = *bore.planned.heat_balance;
    std::string curve = curve_drawing(bore.planned, bore.units, bore.id + "-curve");
    const Markup drawn =
        curve.empty() ? Markup() : framed("Temperature of the boss over the time", std::move(curve));
    const auto beside_curve = [&](const std::string& caption) {
        return element("div", drawn + steps(bore, balance.hot.run, caption, "time.timeline"),
                       {{"class", "pair"}});
    };
    if (!balance.plated)
        return beside_curve("Step by step");
    return element("p",
                   "The job does not say what carries heat off the boss, so two runs stand at the ends of "
                   "what may be: watch the temperature, not the list.") +
           beside_curve("With nothing that carries heat off: the longest waits") +
           steps(bore, balance.plated->run,
                 fmt::format("With one plate of {} on it: the most heat",
                             show(balance.plated->plates.front(), bore.units)),
                 "time.timeline_plate");
}

} // namespace

Markup sheet_heat(const SheetBore& bore) {
    const BorePlan& planned = bore.planned;
    const Markup all =
        element("h3", "Heat") + paragraphs(heat_sentences(planned.heat, bore.units), bore.path);
    if (planned.heat_balance)
        return all +
               paragraphs(time_sentences(*planned.heat_balance, planned.metal.arc, bore.units), bore.path) +
               curve_and_steps(bore);
    return all + small_print(planned.no_balance.empty()
                                 ? std::string("No heat balance.")
                                 : fmt::format("No curve and no times: {}.", planned.no_balance));
}

} // namespace ringfill
