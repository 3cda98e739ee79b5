#include <ringfill/report/text/heat_text.hpp>

#include <fmt/format.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/filter.hpp>

#include <ringfill/report/text/day_text.hpp>
#include <ringfill/report/text/time_text.hpp>
#include <ringfill/report/text/view.hpp>
#include <ringfill/say/heat_sentences.hpp>

namespace ringfill {

std::string heat_text(const Plan& plan, const Style& style) {
    const auto of_bore = [&](const BorePlan& bore) {
        return wrapped(heat_sentences(bore.heat, plan.units)) + time_text(bore, plan.units, true) +
               bore_clock(plan, bore);
    };
    const auto reads_heat = [](const NeedKind& kind) {
        return kind == kinds::temperature_stick || kind == kinds::thermometer;
    };
    const auto with = plan.take | ranges::views::filter(reads_heat, &Need::kind) | ranges::to<std::vector>();
    const auto words = [&](const Need& need) {
        return fmt::format("{} × {}: {}.", need.supplied, item_text(need, plan.units), need.why);
    };
    return bore_by_bore(plan, style, of_bore,
                        with.empty() ? "" : bullets("MEASURE WITH", style, with, words) + "\n");
}

} // namespace ringfill
