#include <ringfill/boring/bore_plan.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/find_if.hpp>
#include <range/v3/algorithm/none_of.hpp>

#include <ringfill/units/show.hpp>

namespace ringfill {
namespace {

template <class Quantity>
bool outside(Quantity value, const std::pair<Quantity, Quantity>& range) {
    return value < (1 - 1e-9) * range.first || value > (1 + 1e-9) * range.second;
}

/// A first cut that is only the remainder of the stock keeps the bit in scale and hard skin.
bool stays_in_skin(const BoringPlan& boring, const Cut& cut) {
    const Length valley = (boring.valley_radius - boring.crown_radius) / 2.0;
    return cut.kind == CutKind::skin && cut.depth < std::min(valley, boring.settings.semi_finish_cut.value);
}

} // namespace

std::vector<std::string> boring_notes(const WornBore& bore, const BoringPlan& boring, UnitSystem units) {
    const BarSettings& settings = boring.settings;
    const auto& [small, small_source] = settings.small_bar;
    const auto& large = settings.large_bar.value;
    const Length step = 2.0 * settings.bit_step.value;
    std::vector<std::string> notes;
    const auto note = [&](const std::string& text) { notes.push_back(bore.name + ": " + text); };
    // Bars turn, feed and reach no further than they are built for.
    if (outside(boring.bar.used, small) && outside(boring.bar.used, large))
        note(fmt::format("{} is outside what portable bars turn (small electric ones {} to {}, large "
                         "hydraulic ones {} to {}) [{}].",
                         show_turning(boring.bar.used), show_turning(small.first), show_turning(small.second),
                         show_turning(large.first), show_turning(large.second), small_source));
    const auto judge = [&](auto value, const auto& usual, std::string_view what, std::string_view where,
                           std::string_view does) {
        const auto& [range, source] = usual;
        if (outside(value, range))
            note(fmt::format("a {} of {}{} is outside what portable bars {}, {} to {} [{}].", what,
                             show(value, units), where, does, show(range.first, units),
                             show(range.second, units), source));
    };
    judge(feed_rate(settings.feed.value, boring.bar.used), settings.axial_feed, "feed", " along the bore",
          "have");
    judge(boring.final_diameter, settings.bores, "bore", "", "serve");
    for (const Cut& cut : boring.cuts)
        if (stays_in_skin(boring, cut))
            note(fmt::format("the first cut after the weld takes only {} and stays in the skin, which dulls "
                             "the bit: take it with the next cut.",
                             show_pitch(cut.depth, units)));
    if (settings.feed.value > settings.nose_radius.value)
        note(fmt::format("a feed of {} a turn is over the nose radius of {}: the roughness that is worked "
                         "out does not hold.",
                         show_pitch(settings.feed.value, units),
                         show_pitch(settings.nose_radius.value, units)));
    if (!settings.deposit.is_known)
        note("no row of cutting.json names its filler: its weld is cut as a hardened one.");
    if (boring.set_ups > 1)
        note(fmt::format("longer than one stroke of the bar: {} set-ups, to be aligned on one another.",
                         boring.set_ups));
    if (boring.limits && boring.limits->high - boring.limits->low < step)
        note(
            fmt::format("the limits are {} apart, closer than one step of the bit ({} on the diameter) [{}].",
                        show_fine(boring.limits->high - boring.limits->low, units), show_fine(step, units),
                        settings.bit_step.source));
    if (boring.final_diameter != bore.finish_diameter)
        note(fmt::format("bored to {}, where the limits of {} begin, not to the finish diameter itself.",
                         show_fine(boring.final_diameter, units), boring.limits->size_class));
    if (boring.grooves.size() < bore.grooves.size())
        note("a groove that is no deeper than the finish diameter is not cut again.");
    return notes;
}

namespace {

/// Adds what the table gives for one bore, each figure that is not there yet.
void assume_for(std::vector<Assumed>& assumed, const BarSettings& settings, UnitSystem units) {
    const auto assume = [&](const char* name, const auto& figure, std::string shown) {
        const auto is_there = [&](const Assumed& one) { return one.path == name && one.value == shown; };
        if (figure.source != "job" && ranges::none_of(assumed, is_there))
            assumed.push_back({name, std::move(shown), figure.source});
    };
    const auto assume_cut = [&](const char* name, const Sourced<Length>& figure) {
        assume(name, figure, show_pitch(figure.value, units));
    };
    const ToolFigures& usual = settings.of(settings.tool, settings.deposit.group);
    const auto assume_row = [&](const char* name, const auto& figure, const auto& range, const auto& shown) {
        assume(name, figure,
               fmt::format("{} ({} to {}), {}, {}", shown(figure.value), shown(range.value.first),
                           shown(range.value.second), words_for(settings.deposit.group),
                           word_of(settings.tool)));
    };
    const auto speed = [&](Speed one) { return show_cutting_speed(one, units); };
    assume_row("boring.cutting_speed", settings.cutting_speed, usual.speed_range, speed);
    assume("cutting.json skin_speed_m_min", settings.skin_speed,
           fmt::format("{}, {}, {}", speed(settings.skin_speed.value), words_for(settings.deposit.group),
                       word_of(settings.tool)));
    assume_row("boring.feed", settings.feed, usual.feed_range,
               [&](Length one) { return show_pitch(one, units); });
    assume_cut("boring.rough_cut", settings.rough_cut);
    assume_row("boring.edge_life", settings.edge_life, usual.life_range, [](Time one) { return show(one); });
    assume_cut("cutting.json semi_finish_cut_mm", settings.semi_finish_cut);
    assume_cut("cutting.json finish_cut_mm", settings.finish_cut);
    assume_cut("cutting.json nose_radius_mm", settings.nose_radius);
}

} // namespace

std::vector<Assumed> assumed_cutting(const std::vector<BorePlan>& bores, UnitSystem units) {
    std::vector<Assumed> assumed;
    for (const BorePlan& bore : bores)
        assume_for(assumed, bore.boring.settings, units);
    const auto first = [&](bool (*asks)(const BorePlan&)) { return ranges::find_if(bores, asks); };
    const auto faced = first([](const BorePlan& bore) { return !bore.boring.facing.empty(); });
    if (faced != bores.end()) {
        const auto& [feed, source] = faced->boring.settings.facing_feed;
        assumed.push_back({"cutting.json facing_feed_mm", show_pitch(feed, units), source});
    }
    const auto general = first([](const BorePlan& bore) { return bore.boring.expansion_is_general; });
    if (general != bores.end()) {
        const auto& [expansion, source] = general->boring.settings.expansion;
        assumed.push_back({"cutting.json expansion_per_K", fmt::format("{:.3g}", expansion), source});
    }
    return assumed;
}

} // namespace ringfill
