#include <ringfill/report/text/boring_text.hpp>

#include <fmt/format.h>

#include <ringfill/boring/bar.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/frame.hpp>
#include <ringfill/report/text/sentence.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

std::string_view words_for(std::string_view step) {
    constexpr std::pair<std::string_view, std::string_view> words[] = {
        {"tool_set", "setting the bit"},
        {"bar_move", "moving the bar"},
        {"trim", "trimming overhang"},
        {"chamfer", "lead-in chamfers"},
        {"groove", "cutting grooves"},
        {"hole", "reopening holes"},
        {"facing_head", "fitting the facing head"}};
    for (const auto& [name, told] : words)
        if (name == step)
            return told;
    return step;
}

std::vector<std::vector<std::string>> cut_rows(const BoringPlan& boring, UnitSystem units) {
    std::vector<std::vector<std::string>> rows{{"cut", "per side", "from", "to", "time"}};
    for (const Cut& cut : boring.cuts) {
        const bool to_size = cut.kind == CutKind::finish || cut.kind == CutKind::spring;
        rows.push_back({words_for(cut.kind), show_pitch(cut.depth, units),
                        cut.kind == CutKind::spring ? show_fine(cut.from, units) : show(cut.from, units),
                        to_size ? show_fine(cut.to, units) : show(cut.to, units), show(cut.time)});
    }
    for (std::size_t i = 0; i < boring.facing.size(); ++i) {
        const Facing& face = boring.facing[i];
        rows.push_back({fmt::format("face {} × {}, {}", i + 1, face.cuts, show_turning(face.bar.used)),
                        show_pitch(face.depth, units), "", "", show(face.time)});
    }
    return rows;
}

std::string size_line(const BoringPlan& boring, UnitSystem units) {
    if (!boring.limits)
        return "size: the job gives neither size_class nor size_limits.";
    return fmt::format("size at {}: {} to {}{}.", show(celsius(reference_temperature_degC), units),
                       show_fine_low(boring.limits->low, units), show_fine_high(boring.limits->high, units),
                       boring.limits->size_class.empty()
                           ? std::string()
                           : fmt::format(" ({})", printable(boring.limits->size_class, 20)));
}

/// What the gauge shall read while the bore is warm.
std::string gauge_line(const BoringPlan& boring, UnitSystem units) {
    std::string text = "the gauge must read";
    for (const GaugeReading& gauge : boring.gauge) {
        text += &gauge == &boring.gauge.front() ? " " : "; ";
        text += gauge.limits ? fmt::format("{} to {}", show_fine_low(gauge.limits->first, units),
                                           show_fine_high(gauge.limits->second, units))
                             : show_fine(gauge.reading, units);
        text += fmt::format(" at {}", show(gauge.at, units));
    }
    return text + fmt::format(" (gauge at {}).", show(celsius(reference_temperature_degC), units));
}

std::string groove_line(const GrooveCut& groove, UnitSystem units) {
    const std::string text =
        fmt::format("groove {}: cut again {} deep, ", groove.groove + 1, show_pitch(groove.depth, units));
    if (groove.weld_left < Length())
        return text +
               fmt::format("its floor lies {} deeper than the bore's weld.", show(-groove.weld_left, units));
    return text + fmt::format("{} of weld left under its floor.", show(groove.weld_left, units));
}

std::string time_line(const BoringPlan& boring) {
    std::string text = fmt::format("time {}: cutting {}", show(boring.time()), show(boring.cutting_time));
    if (boring.skim_time > Time())
        text += fmt::format(" (of it {} before the weld)", show(boring.skim_time));
    for (const Standing& step : boring.standing)
        text += fmt::format(", {} {} × {}", words_for(step.step), step.count, show(step.each.usual.value));
    return text + fmt::format("; edges: {} rough, {} finish.", boring.edges.rough, boring.edges.finish);
}

std::string bore_boring_text(const BorePlan& bore, UnitSystem units, const Style& style) {
    const BoringPlan& boring = bore.boring;
    std::string text = bore_heading(bore, style);
    text += wrapped(bar_sentence(bore, units), "  ");
    text += table(cut_rows(boring, units), {false, true, true, true, true});
    text += wrapped(size_line(boring, units), "  ") + wrapped(gauge_line(boring, units), "  ");
    return text + wrapped(boring_sentences(boring, units)) + "\n";
}

} // namespace

std::string words_for(CutKind kind) {
    switch (kind) {
    case CutKind::skim:
        return "skim, before the weld";
    case CutKind::skin:
        return "first, under the skin";
    case CutKind::semi_finish:
        return "semi-finish";
    case CutKind::spring:
        return "spring pass";
    default:
        return std::string(name_of(kind));
    }
}

std::string bar_sentence(const BorePlan& bore, UnitSystem units) {
    const BoringPlan& boring = bore.boring;
    const Length diameter = 2.0 * bore.build.finish_radius;
    return fmt::format("bar {}{}, which cuts at {}; feed {} a turn, {}{}.", show_turning(boring.bar.used),
                       !boring.bar.listed    ? " (computed)"
                       : boring.bar.too_fast ? " (its lowest, too fast)"
                                             : "",
                       show_cutting_speed(cutting_speed_at(boring.bar.used, diameter), units),
                       show_pitch(boring.settings.feed.value, units),
                       show(feed_rate(boring.settings.feed.value, boring.bar.used), units),
                       boring.set_ups > 1 ? fmt::format("; {} set-ups", boring.set_ups) : "");
}

Sentences boring_sentences(const BoringPlan& boring, UnitSystem units) {
    Sentences sentences;
    for (const GrooveCut& groove : boring.grooves)
        sentences.push_back({groove_line(groove, units)});
    sentences.push_back({fmt::format("roughness by feed and nose radius alone: Rt {}, Ra {}; expect more.",
                                     show_micro(boring.roughness.peak_to_valley, units),
                                     show_micro(boring.roughness.mean, units)),
                         Stands::among,
                         {"boring.roughness.rt_um", "boring.roughness.ra_um"}});
    sentences.push_back({time_line(boring), Stands::among, {"boring.time_s", "boring.cutting_s"}});
    return sentences;
}

std::string boring_text(const Plan& plan, const Style& style) {
    std::string text = view_head(plan, style);
    for (const BorePlan& bore : plan.bores)
        text += bore_boring_text(bore, plan.units, style);
    return text + view_end(plan, style);
}

} // namespace ringfill
