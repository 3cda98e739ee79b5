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
void note_bar(std::vector<std::string>& notes, const std::string& name, const BoringPlan& boring,
              const Cutting& cutting, UnitSystem units) {
    const auto& small = cutting.small_bar.value;
    const auto& large = cutting.large_bar.value;
    if (outside(boring.bar.used, small) && outside(boring.bar.used, large))
        notes.push_back(fmt::format(
            "{}: {} is outside what portable bars turn (small electric ones {} to {}, "
            "large hydraulic ones {} to {}) [{}].",
            name, show_turning(boring.bar.used), show_turning(small.first), show_turning(small.second),
            show_turning(large.first), show_turning(large.second), cutting.small_bar.source));
    const Speed feed = feed_rate(boring.settings.feed.value, boring.bar.used);
    if (outside(feed, cutting.axial_feed.value))
        notes.push_back(
            fmt::format("{}: a feed of {} along the bore is outside what portable bars have, {} to "
                        "{} [{}].",
                        name, show(feed, units), show(cutting.axial_feed.value.first, units),
                        show(cutting.axial_feed.value.second, units), cutting.axial_feed.source));
    if (outside(boring.final_diameter, cutting.bores.value))
        notes.push_back(fmt::format("{}: a bore of {} is outside what portable bars serve, {} to {} [{}].",
                                    name, show(boring.final_diameter, units),
                                    show(cutting.bores.value.first, units),
                                    show(cutting.bores.value.second, units), cutting.bores.source));
}

/// A first cut that is only the remainder of the stock keeps the bit in scale and hard skin.
void note_skin(std::vector<std::string>& notes, const std::string& name, const BoringPlan& boring,
               const Cutting& cutting, UnitSystem units) {
    const auto first = std::find_if(boring.cuts.begin(), boring.cuts.end(),
                                    [](const Cut& cut) { return cut.kind == CutKind::skin; });
    const Length valley = (boring.valley_radius - boring.crown_radius) / 2.0;
    if (first == boring.cuts.end() || first->depth >= std::min(valley, cutting.semi_finish_cut.value))
        return;
    notes.push_back(
        fmt::format("{}: the first cut after the weld takes only {} and stays in the skin, which dulls "
                    "the bit: take it with the next cut.",
                    name, show_pitch(first->depth, units)));
}

} // namespace

std::vector<std::string> boring_notes(const WornBore& bore, const BoringPlan& boring, const Cutting& cutting,
                                      UnitSystem units) {
    std::vector<std::string> notes;
    note_bar(notes, bore.name, boring, cutting, units);
    note_skin(notes, bore.name, boring, cutting, units);
    if (boring.settings.feed.value > cutting.nose_radius.value)
        notes.push_back(
            fmt::format("{}: a feed of {} a turn is over the nose radius of {}: the roughness that "
                        "is worked out does not hold.",
                        bore.name, show_pitch(boring.settings.feed.value, units),
                        show_pitch(cutting.nose_radius.value, units)));
    if (boring.set_ups > 1)
        notes.push_back(fmt::format("{}: longer than one stroke of the bar: {} set-ups, to be aligned on one "
                                    "another.",
                                    bore.name, boring.set_ups));
    if (boring.limits && boring.limits->high - boring.limits->low < 2.0 * cutting.bit_step.value)
        notes.push_back(fmt::format("{}: the limits are {} apart, closer than one step of the bit ({} on the "
                                    "diameter) [{}].",
                                    bore.name, show_fine(boring.limits->high - boring.limits->low, units),
                                    show_fine(2.0 * cutting.bit_step.value, units), cutting.bit_step.source));
    if (boring.final_diameter != bore.finish_diameter)
        notes.push_back(
            fmt::format("{}: bored to {}, where the limits of {} begin, not to the finish diameter "
                        "itself.",
                        bore.name, show_fine(boring.final_diameter, units), boring.limits->size_class));
    if (boring.grooves.size() < bore.grooves.size())
        notes.push_back(fmt::format(
            "{}: a groove that is no deeper than the finish diameter is not cut again.", bore.name));
    return notes;
}

} // namespace ringfill
