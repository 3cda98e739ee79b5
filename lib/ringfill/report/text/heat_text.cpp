#include <ringfill/report/text/heat_text.hpp>

#include <fmt/format.h>

#include <ringfill/report/text/day_text.hpp>
#include <ringfill/report/text/time_text.hpp>
#include <ringfill/report/text/view.hpp>
#include <ringfill/say/heat_sentences.hpp>

namespace ringfill {

std::string heat_text(const Plan& plan, const Style& style) {
    std::vector<std::string> with;
    for (const Need& need : plan.take)
        if (is_for_measuring(need.kind))
            with.push_back(fmt::format("{} × {}: {}.", need.supplied, item_text(need, plan.units), need.why));
    const auto of_bore = [&](const BorePlan& bore) {
        const std::string sentences = wrapped(heat_sentences(bore.heat, plan.units));
        return bore.heat.preheat.state == PreheatState::not_known
                   ? sentences
                   : sentences + time_and_curve(bore, plan.units) + bore_clock(plan, bore);
    };
    return bore_by_bore(plan, style, of_bore,
                        with.empty() ? "" : bullets("MEASURE WITH", with, style) + "\n");
}

} // namespace ringfill
