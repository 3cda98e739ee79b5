#include <fmt/format.h>

#include <ringfill/report/draw/drawings.hpp>
#include <ringfill/report/page/sheet_parts.hpp>
#include <ringfill/say/heat_sentences.hpp>
#include <ringfill/say/time_sentences.hpp>

namespace ringfill {
namespace {

PageTable::Row step_row(const HeatStep& step, const Part& in) {
    const Markup to = step.stage == HeatStage::warm_up
                          ? in.figure("to_degC", show_minimum(step.to, in.units), Shown::up)
                          : in.figure("to_degC", step.to);
    return PageTable::row(in.text("step", std::string(step_name(step.stage))), place_of(step),
                          in.figure("s", step.time), in.figure("from_degC", step.from), to);
}

/// The steps of a run in short. @param list its name in the result.
Markup steps(const SheetBore& bore, const HeatRun& run, const std::string& caption, const std::string& list) {
    if (run.steps.empty())
        return element("p",
                       fmt::format("{}: nothing, it does not come to {}.", caption,
                                   show_minimum(run.end_at, bore.units)),
                       {{"class", "told"}});
    PageTable table{.caption = caption,
                    .heads = {"step", "where", "time", "from", "to"},
                    .numbers = {2, 5},
                    .kind = "steps"};
    table.add_list(
        run.steps.size(), {20, 13, 6},
        [&](std::size_t i) { return step_row(run.steps[i], bore.in(list, i)); },
        [&](std::size_t from, std::size_t before) {
            return PageTable::row("…", element("span", left_out(run, from, before), {{"class", "told"}}), "",
                                  "", "");
        });
    return written(table);
}

Markup curve(const SheetBore& bore) {
    std::string drawn = curve_drawing(bore.planned, bore.units, bore.id + "-curve");
    if (drawn.empty())
        return {};
    return framed("Temperature of the boss over the time", std::move(drawn));
}

Markup curve_and_steps(const SheetBore& bore) {
    const HeatBalance& balance = *bore.planned.heat_balance;
    const auto beside_curve = [&](const std::string& caption) {
        return element("div", curve(bore) + steps(bore, balance.hot.run, caption, "time.timeline"),
                       {{"class", "pair"}});
    };
    if (!balance.plated)
        return beside_curve("Step by step");
    return element("p",
                   "The job does not say what carries heat off the boss, so two runs stand at the ends of "
                   "what may be: watch the temperature, not the list.") +
           beside_curve("With nothing that carries heat off: the most stops") +
           steps(bore, balance.plated->run,
                 fmt::format("With one plate of {} on it: the most heat",
                             show(balance.plated->plates.front(), bore.units)),
                 "time.timeline_plate");
}

} // namespace

Markup sheet_heat(const SheetBore& bore) {
    const Markup all =
        element("h3", "Heat") + paragraphs(heat_sentences(bore.planned.heat, bore.units), bore.path);
    if (!bore.planned.heat_balance)
        return all + element("p",
                             bore.planned.no_balance.empty()
                                 ? std::string("No heat balance.")
                                 : fmt::format("No curve and no times: {}.", bore.planned.no_balance),
                             {{"class", "told"}});
    return all + paragraphs(time_sentences(bore.planned, bore.units), bore.path) + curve_and_steps(bore);
}

} // namespace ringfill
