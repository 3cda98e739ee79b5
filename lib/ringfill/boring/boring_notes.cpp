#include <ringfill/boring/bore_boring.hpp>

#include <algorithm>

#include <fmt/format.h>

namespace ringfill {
namespace {

template <class Quantity>
bool outside(Quantity value, const std::pair<Quantity, Quantity>& range) {
    return value < (1 - 1e-9) * range.first || value > (1 + 1e-9) * range.second;
}

/// Bars turn, feed and reach no further than they are built for.
std::vector<std::string> bar_notes(const BoringPlan& boring, const Cutting& cutting, UnitSystem units) {
    const auto& [small, small_source] = cutting.small_bar;
    const auto& large = cutting.large_bar.value;
    const auto& [feeds, feeds_source] = cutting.axial_feed;
    const auto& [sizes, sizes_source] = cutting.bores;
    const Speed feed = feed_rate(boring.settings.feed.value, boring.bar.used);
    std::vector<std::string> notes;
    if (outside(boring.bar.used, small) && outside(boring.bar.used, large))
        notes.push_back(fmt::format("{} is outside what portable bars turn (small electric ones {} to {}, "
                                    "large hydraulic ones {} to {}) [{}].",
                                    show_turning(boring.bar.used), show_turning(small.first),
                                    show_turning(small.second), show_turning(large.first),
                                    show_turning(large.second), small_source));
    if (outside(feed, feeds))
        notes.push_back(fmt::format(
            "a feed of {} along the bore is outside what portable bars have, {} to {} [{}].",
            show(feed, units), show(feeds.first, units), show(feeds.second, units), feeds_source));
    if (outside(boring.final_diameter, sizes))
        notes.push_back(fmt::format("a bore of {} is outside what portable bars serve, {} to {} [{}].",
                                    show(boring.final_diameter, units), show(sizes.first, units),
                                    show(sizes.second, units), sizes_source));
    return notes;
}

/// A first cut that is only the remainder of the stock keeps the bit in scale and hard skin.
bool stays_in_skin(const BoringPlan& boring, const Cut& cut, const Cutting& cutting) {
    const Length valley = (boring.valley_radius - boring.crown_radius) / 2.0;
    return cut.kind == CutKind::skin && cut.depth < std::min(valley, cutting.semi_finish_cut.value);
}

} // namespace

std::vector<std::string> boring_notes(const WornBore& bore, const BoringPlan& boring, const Cutting& cutting,
                                      UnitSystem units) {
    std::vector<std::string> notes = bar_notes(boring, cutting, units);
    for (const Cut& cut : boring.cuts)
        if (stays_in_skin(boring, cut, cutting))
            notes.push_back(fmt::format("the first cut after the weld takes only {} and stays in the skin, "
                                        "which dulls the bit: take it with the next cut.",
                                        show_pitch(cut.depth, units)));
    if (boring.settings.feed.value > cutting.nose_radius.value)
        notes.push_back(fmt::format("a feed of {} a turn is over the nose radius of {}: the roughness that "
                                    "is worked out does not hold.",
                                    show_pitch(boring.settings.feed.value, units),
                                    show_pitch(cutting.nose_radius.value, units)));
    if (boring.set_ups > 1)
        notes.push_back(fmt::format(
            "longer than one stroke of the bar: {} set-ups, to be aligned on one another.", boring.set_ups));
    const Length step = 2.0 * cutting.bit_step.value;
    if (boring.limits && boring.limits->high - boring.limits->low < step)
        notes.push_back(
            fmt::format("the limits are {} apart, closer than one step of the bit ({} on the diameter) [{}].",
                        show_fine(boring.limits->high - boring.limits->low, units), show_fine(step, units),
                        cutting.bit_step.source));
    if (boring.final_diameter != bore.finish_diameter)
        notes.push_back(
            fmt::format("bored to {}, where the limits of {} begin, not to the finish diameter itself.",
                        show_fine(boring.final_diameter, units), boring.limits->size_class));
    if (boring.grooves.size() < bore.grooves.size())
        notes.push_back("a groove that is no deeper than the finish diameter is not cut again.");
    for (std::string& note : notes)
        note = bore.name + ": " + note;
    return notes;
}

} // namespace ringfill
