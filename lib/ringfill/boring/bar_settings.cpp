#include <ringfill/boring/bar_settings.hpp>

#include <fmt/format.h>

namespace ringfill {
namespace {

template <class Quantity>
Sourced<Quantity> given_or(const std::optional<Quantity>& given, const Sourced<Quantity>& usual) {
    return given ? Sourced<Quantity>{*given, "job"} : usual;
}

} // namespace

BarSettings bar_settings(const BoringBar& bar, const Cutting& cutting) {
    return {given_or(bar.cutting_speed, cutting.cutting_speed),
            given_or(bar.feed, cutting.feed),
            given_or(bar.rough_cut, cutting.rough_cut),
            given_or(bar.edge_life, cutting.edge_life),
            bar.stroke,
            bar.bar_speeds};
}

std::vector<Assumed> assumed_cutting(const BoringBar& bar, const Cutting& cutting, NeededFigures needed,
                                     UnitSystem units) {
    std::vector<Assumed> assumed;
    if (!bar.cutting_speed)
        assumed.push_back({"boring.cutting_speed", show_cutting_speed(cutting.cutting_speed.value, units),
                           cutting.cutting_speed.source});
    if (!bar.feed)
        assumed.push_back({"boring.feed", show_pitch(cutting.feed.value, units), cutting.feed.source});
    if (!bar.rough_cut)
        assumed.push_back(
            {"boring.rough_cut", show_pitch(cutting.rough_cut.value, units), cutting.rough_cut.source});
    if (!bar.edge_life)
        assumed.push_back({"boring.edge_life", show(cutting.edge_life.value), cutting.edge_life.source});
    const auto from_table = [&](const char* name, const Sourced<Length>& figure) {
        assumed.push_back({name, show_pitch(figure.value, units), figure.source});
    };
    from_table("cutting.json semi_finish_cut_mm", cutting.semi_finish_cut);
    from_table("cutting.json finish_cut_mm", cutting.finish_cut);
    from_table("cutting.json nose_radius_mm", cutting.nose_radius);
    if (needed.facing_feed)
        from_table("cutting.json facing_feed_mm", cutting.facing_feed);
    if (needed.expansion)
        assumed.push_back({"cutting.json expansion_per_K", fmt::format("{:.3g}", cutting.expansion.value),
                           cutting.expansion.source});
    return assumed;
}

} // namespace ringfill
