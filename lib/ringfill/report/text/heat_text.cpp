#include <ringfill/report/text/heat_text.hpp>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/day_text.hpp>
#include <ringfill/report/text/frame.hpp>
#include <ringfill/report/text/sentence.hpp>
#include <ringfill/report/text/time_text.hpp>
#include <ringfill/say/heat_sentences.hpp>

namespace ringfill {
namespace {

std::string bore_heat_text(const Plan& plan, const BorePlan& bore, const Style& style) {
    std::string text = bore_heading(bore, style) + wrapped(heat_sentences(bore.heat, plan.units));
    if (bore.heat.preheat.state != PreheatState::not_known)
        text += time_and_curve(bore, plan.units) + bore_clock(plan, bore);
    return text + "\n";
}

} // namespace

std::string heat_text(const Plan& plan, const Style& style) {
    std::string text = view_head(plan, style);
    for (const BorePlan& bore : plan.bores)
        text += bore_heat_text(plan, bore, style);
    std::vector<std::string> with;
    for (const Need& need : plan.take)
        if (is_for_measuring(need.kind))
            with.push_back(fmt::format("{} × {}: {}.", need.supplied, item_text(need, plan.units), need.why));
    if (!with.empty())
        text += bullets("MEASURE WITH", with, style) + "\n";
    return text + view_end(plan, style);
}

} // namespace ringfill
