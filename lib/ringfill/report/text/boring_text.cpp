#include <ringfill/report/text/boring_text.hpp>

#include <fmt/format.h>

#include <range/v3/view/enumerate.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/view.hpp>
#include <ringfill/say/boring_sentences.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

Rows cut_rows(const BoringPlan& boring, UnitSystem units) {
    Rows rows{{"cut", "per side", "from", "to", "time"}};
    for (const Cut& cut : boring.cuts) {
        const auto [from, to] = shown_diameters(cut, units);
        rows.push_back({std::string(words_for(word_of(cut.kind))), show_pitch(cut.depth, units), from, to,
                        show(cut.time)});
    }
    for (const auto& [i, face] : ranges::views::enumerate(boring.facing))
        rows.push_back({fmt::format("face {} × {}, {}", i + 1, face.cuts, show_turning(face.bar.used)),
                        show_pitch(face.depth, units), "", "", show(face.time)});
    return rows;
}

std::string range_of(Length low, Length high, UnitSystem units) {
    return fmt::format("{} to {}", show_limit(low, units, true), show_limit(high, units, false));
}

std::string size_line(const BoringPlan& boring, UnitSystem units) {
    if (!boring.limits)
        return fmt::format("size: {}.", no_size_limits);
    const SizeLimits& limits = *boring.limits;
    return fmt::format("size at {}: {}{}.", show(celsius(reference_temperature_degC), units),
                       range_of(limits.low, limits.high, units),
                       limits.size_class.empty() ? ""
                                                 : fmt::format(" ({})", printable(limits.size_class, 20)));
}

/// What the gauge shall read while the bore is warm.
std::string gauge_line(const BoringPlan& boring, UnitSystem units) {
    const auto reading = [&](const GaugeReading& gauge) {
        return fmt::format("{} at {}",
                           gauge.limits ? range_of(gauge.limits->first, gauge.limits->second, units)
                                        : show_fine(gauge.reading, units),
                           show(gauge.at, units));
    };
    return fmt::format("the gauge must read {} (gauge at {}).", listed(boring.gauge, "; ", reading),
                       show(celsius(reference_temperature_degC), units));
}

} // namespace

std::string boring_text(const Plan& plan, const Style& style) {
    return bore_by_bore(plan, style, [&](const BorePlan& bore) {
        const BoringPlan& boring = bore.boring;
        return wrapped(bar_sentence(bore, plan.units).text) +
               table(cut_rows(boring, plan.units), {false, true, true, true, true}) +
               wrapped(size_line(boring, plan.units)) + wrapped(gauge_line(boring, plan.units)) +
               wrapped(boring_sentences(boring, plan.units));
    });
}

} // namespace ringfill
