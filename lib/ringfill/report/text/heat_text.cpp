#include <ringfill/report/text/heat_text.hpp>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/caution_list.hpp>
#include <ringfill/report/text/columns.hpp>
#include <ringfill/report/text/day_text.hpp>
#include <ringfill/report/text/note_list.hpp>
#include <ringfill/report/text/sentence.hpp>
#include <ringfill/report/text/time_text.hpp>
#include <ringfill/say/heat_sentences.hpp>

namespace ringfill {
namespace {

std::string bore_heat_text(const Plan& plan, const BorePlan& bore, const Style& style) {
    std::string text = style.strong(fmt::format(
        "{}{}", printable(bore.name, 60), bore.count > 1 ? fmt::format(", each of {}", bore.count) : ""));
    text += '\n' + wrapped(heat_sentences(bore.heat, plan.units));
    if (bore.heat.preheat.state != PreheatState::not_known)
        text += time_and_curve(bore, plan.units) + bore_clock(plan, bore);
    return text + "\n";
}

} // namespace

std::string heat_text(const Plan& plan, const Style& style) {
    std::string text = style.strong(wrapped(printable(plan.title), ""));
    text += heat_head(plan, style) + "\n";
    for (const BorePlan& bore : plan.bores)
        text += bore_heat_text(plan, bore, style);
    std::string with;
    for (const Need& line : plan.take)
        if (is_for_measuring(line.kind))
            with += wrapped(fmt::format("{} × {}: {}.", line.supplied, item_text(line, plan.units), line.why),
                            "- ");
    if (!with.empty())
        text += fmt::format("{}\n{}\n", style.strong("MEASURE WITH"), with);
    return text + caution_list(plan, style) + "\n" + note_list(plan, style) + closing_line();
}

} // namespace ringfill
