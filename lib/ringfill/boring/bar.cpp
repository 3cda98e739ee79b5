#include <ringfill/boring/bar.hpp>

#include <algorithm>
#include <numbers>

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
    const auto from_table = [&](const char* name, const Sourced<Length>& figure) {
        assumed.push_back({name, show_pitch(figure.value, units), figure.source});
    };
    if (!bar.feed)
        from_table("boring.feed", cutting.feed);
    if (!bar.rough_cut)
        from_table("boring.rough_cut", cutting.rough_cut);
    if (!bar.edge_life)
        assumed.push_back({"boring.edge_life", show(cutting.edge_life.value), cutting.edge_life.source});
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

Turning turning_for(Speed cutting_speed, Length diameter) {
    return cutting_speed / (std::numbers::pi * diameter);
}

Speed cutting_speed_at(Turning turning, Length diameter) {
    return std::numbers::pi * diameter * turning;
}

BarSpeed bar_speed(Speed cutting_speed, Length diameter, const std::vector<Turning>& listed) {
    BarSpeed speed;
    speed.computed = turning_for(cutting_speed, diameter);
    speed.used = speed.computed;
    if (listed.empty())
        return speed;
    speed.listed = true;
    speed.used = Turning();
    for (const Turning& one : listed)
        if (one <= (1 + 1e-9) * speed.computed)
            speed.used = std::max(speed.used, one);
    speed.too_fast = !(speed.used > Turning());
    if (speed.too_fast)
        speed.used = *std::min_element(listed.begin(), listed.end());
    return speed;
}

Speed feed_rate(Length feed, Turning turning) {
    return feed * turning;
}

Time cutting_time(Length way, Length feed, Turning turning) {
    return way / feed_rate(feed, turning);
}

} // namespace ringfill
