#include <ringfill/say/boring_sentences.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/find_if.hpp>

#include <ringfill/boring/bar.hpp>
#include <ringfill/fault/listed.hpp>

namespace ringfill {
namespace {

constexpr std::pair<std::string_view, std::string_view> boring_words[] = {
    {"skim", "skim, before the weld"},
    {"skin", "first, under the skin"},
    {"semi_finish", "semi-finish"},
    {"spring", "spring pass"},
    {"tool_set", "setting the bit"},
    {"bar_move", "moving the bar"},
    {"trim", "trimming overhang"},
    {"chamfer", "lead-in chamfers"},
    {"groove", "cutting grooves"},
    {"hole", "reopening holes"},
    {"facing_head", "fitting the facing head"}};

std::string groove_line(const GrooveCut& groove, UnitSystem units) {
    return fmt::format(
        "groove {}: cut again {} deep, {}.", groove.groove + 1, show_pitch(groove.depth, units),
        groove.weld_left < Length()
            ? fmt::format("its floor lies {} deeper than the bore's weld", show(-groove.weld_left, units))
            : fmt::format("{} of weld left under its floor", show(groove.weld_left, units)));
}

std::string time_line(const BoringPlan& boring) {
    const auto step = [](const Standing& one) {
        return fmt::format(", {} {} × {}", words_for(one.step), one.count, show(one.each.usual.value));
    };
    return fmt::format(
        "time {}: cutting {}{}{}; edges: {} rough, {} finish.", show(boring.time()),
        show(boring.cutting_time),
        boring.skim_time > Time() ? fmt::format(" (of it {} before the weld)", show(boring.skim_time)) : "",
        listed(boring.standing, "", step), boring.edges.rough, boring.edges.finish);
}

/// What the deposit is cut at, and what is usual; a figure of the job stands alone.
std::string deposit_text(const BarSettings& settings, UnitSystem units) {
    const ToolFigures& usual = settings.of(settings.tool, settings.deposit.group);
    const auto with_range = [](const auto& figure, const auto& range, const auto& shown) {
        return shown(figure.value) +
               (figure.source == "job" ? ""
                                       : fmt::format(" ({} to {})", shown(range.first), shown(range.second)));
    };
    const auto speed = [&](Speed one) { return show_cutting_speed(one, units); };
    const auto time = [](Time one) { return show(one); };
    return fmt::format(" Cut as {} with {}: {}{}; an edge lasts {}.", words_for(settings.deposit.group),
                       word_of(settings.tool),
                       with_range(settings.cutting_speed, usual.speed_range.value, speed),
                       settings.skin_speed.source == "job"
                           ? ""
                           : fmt::format(", {} in the skin", speed(settings.skin_speed.value)),
                       with_range(settings.edge_life, usual.life_range.value, time));
}

} // namespace

std::string_view words_for(std::string_view name) {
    const auto found = ranges::find_if(boring_words, [&](const auto& row) { return row.first == name; });
    return found == std::end(boring_words) ? name : found->second;
}

std::pair<std::string, std::string> shown_diameters(const Cut& cut, UnitSystem units) {
    const bool is_spring = cut.kind == CutKind::spring;
    return {is_spring ? show_fine(cut.from, units) : show(cut.from, units),
            is_spring || cut.kind == CutKind::finish ? show_fine(cut.to, units) : show(cut.to, units)};
}

Sentence bar_sentence(const BorePlan& bore, UnitSystem units) {
    const BoringPlan& boring = bore.boring;
    const Length feed = boring.settings.feed.value;
    return {fmt::format(
                "bar {}{}, which cuts at {}; feed {} a turn, {}{}.{}", show_turning(boring.bar.used),
                !boring.bar.listed    ? " (computed)"
                : boring.bar.too_fast ? " (its lowest, too fast)"
                                      : "",
                show_cutting_speed(cutting_speed_at(boring.bar.used, 2.0 * bore.build.finish_radius), units),
                show_pitch(feed, units), show(feed_rate(feed, boring.bar.used), units),
                boring.set_ups > 1 ? fmt::format("; {} set-ups", boring.set_ups) : "",
                deposit_text(boring.settings, units)),
            {"boring.rpm", "boring.cutting_speed_m_min", "boring.feed_mm", "boring.feed_mm_min"}};
}

Sentences boring_sentences(const BoringPlan& boring, UnitSystem units) {
    Sentences sentences;
    for (const GrooveCut& groove : boring.grooves)
        sentences.push_back({groove_line(groove, units)});
    const auto& [rt, ra] = boring.roughness;
    sentences.push_back({fmt::format("roughness by feed and nose radius alone: Rt {}, Ra {}; expect more.",
                                     show_micro(rt, units), show_micro(ra, units)),
                         {"boring.roughness.rt_um", "boring.roughness.ra_um"}});
    sentences.push_back({time_line(boring), {"boring.time_s", "boring.cutting_s"}});
    return sentences;
}

} // namespace ringfill
