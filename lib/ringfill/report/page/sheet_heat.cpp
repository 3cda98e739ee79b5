#include <fmt/format.h>

#include <ringfill/report/draw/drawings.hpp>
#include <ringfill/report/page/figure.hpp>
#include <ringfill/report/page/page_table.hpp>
#include <ringfill/report/page/sheet_bore.hpp>
#include <ringfill/report/text/heat_text.hpp>
#include <ringfill/report/text/time_text.hpp>
#include <ringfill/say/heat_steps.hpp>

namespace ringfill {
namespace {

/// The steps stand in short: a list of more is told by its ends.
constexpr std::size_t longest_list = 20;
constexpr std::size_t kept_at_begin = 13;
constexpr std::size_t kept_at_end = 6;

std::vector<Markup> step_row(const HeatStep& step, const std::string& path, UnitSystem units) {
    const bool to_minimum = step.stage == HeatStage::warm_up;
    return {as_told(path + ".step", std::string(step_name(step.stage))), words(place_of(step)),
            figure(path + ".s", show(step.time)), figure(path + ".from_degC", show(step.from, units)),
            figure(path + ".to_degC", to_minimum ? show_minimum(step.to, units) : show(step.to, units),
                   to_minimum ? Shown::up : Shown::plainly)};
}

Markup steps(const HeatRun& run, const std::string& caption, const std::string& path, UnitSystem units) {
    if (run.steps.empty())
        return element(
            "p",
            fmt::format("{}: nothing, it does not come to {}.", caption, show_minimum(run.end_at, units)),
            {{"class", "told"}});
    PageTable table{caption, {{"step"}, {"where"}, {"time", true}, {"from", true}, {"to", true}}};
    table.kind = "steps";
    const std::size_t count = run.steps.size();
    for (std::size_t i = 0; i < count; ++i) {
        if (count > longest_list && i == kept_at_begin) {
            const std::size_t end = count - kept_at_end;
            table.rows.push_back(
                {words("…"), element("span", left_out(run, i, end), {{"class", "told"}}), {}, {}, {}});
            i = end;
        }
        table.rows.push_back(step_row(run.steps[i], fmt::format("{}[{}]", path, i), units));
    }
    return written(table);
}

Markup curve(const SheetBore& bore) {
    std::string drawn = curve_drawing(bore.planned, bore.units(), bore.id + "-curve");
    if (drawn.empty())
        return {};
    return element("figure", element("figcaption", "Temperature of the boss over the time") +
                                 Markup::as_written(std::move(drawn)));
}

Markup curve_and_steps(const SheetBore& bore) {
    const HeatBalance& balance = *bore.planned.heat_balance;
    const auto beside_curve = [&](const std::string& caption) {
        return element("div",
                       curve(bore) + steps(balance.hot.run, caption, bore.at("time.timeline"), bore.units()),
                       {{"class", "pair"}});
    };
    if (!balance.plated)
        return beside_curve("Step by step");
    return element("p",
                   "The job does not say what carries heat off the boss, so two runs stand at the ends of "
                   "what may be: watch the temperature, not the list.") +
           beside_curve("With nothing that carries heat off: the most stops") +
           steps(balance.plated->run,
                 fmt::format("With one plate of {} on it: the most heat",
                             show(balance.plated->plates.front(), bore.units())),
                 bore.at("time.timeline_plate"), bore.units());
}

} // namespace

Markup sheet_heat(const SheetBore& bore) {
    const Markup all =
        element("h3", "Heat") + paragraphs(heat_sentences(bore.planned.heat, bore.units()), bore.path);
    if (!bore.planned.heat_balance)
        return all + element("p",
                             bore.planned.no_balance.empty()
                                 ? std::string("No heat balance.")
                                 : fmt::format("No curve and no times: {}.", bore.planned.no_balance),
                             {{"class", "told"}});
    return all + paragraphs(time_sentences(bore.planned, bore.units()), bore.path) + curve_and_steps(bore);
}

} // namespace ringfill
