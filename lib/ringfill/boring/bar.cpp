#include <ringfill/boring/bar.hpp>

#include <algorithm>
#include <numbers>

namespace ringfill {

BarSettings bar_settings(const BoringBar& bar, const Cutting& cutting, const Deposit& deposit) {
    const ToolFigures& row = cutting.of(bar.tool, deposit.group);
    BarSettings settings{cutting,           bar.stroke,     bar.bar_speeds, deposit,      bar.tool,
                         row.cutting_speed, row.skin_speed, row.feed,       row.edge_life};
    if (settings.cuts_to_the_end()) {
        const auto at_least = [](auto& figure, const auto& least) {
            if (figure.value < least.value)
                figure = least;
        };
        at_least(settings.semi_finish_cut, cutting.least_last_cut);
        at_least(settings.finish_cut, cutting.least_last_cut);
        at_least(settings.feed, cutting.least_feed);
        at_least(settings.facing_feed, cutting.least_feed);
    }
    const auto put = [](auto& figure, const auto& given) {
        if (given)
            figure = {*given, "job"};
    };
    put(settings.cutting_speed, bar.cutting_speed);
    put(settings.skin_speed, bar.cutting_speed);
    put(settings.feed, bar.feed);
    put(settings.rough_cut, bar.rough_cut);
    put(settings.edge_life, bar.edge_life);
    return settings;
}

Speed cutting_speed_at(Turning turning, Length diameter) {
    return std::numbers::pi * diameter * turning;
}

BarSpeed bar_speed(Speed cutting_speed, Length diameter, const std::vector<Turning>& listed) {
    const Turning computed = cutting_speed / (std::numbers::pi * diameter);
    if (listed.empty())
        return {computed, computed};
    Turning used;
    for (const Turning& turning : listed)
        if (turning <= (1 + 1e-9) * computed)
            used = std::max(used, turning);
    const bool too_fast = !(used > Turning());
    return {computed, too_fast ? *std::min_element(listed.begin(), listed.end()) : used, true, too_fast};
}

Speed feed_rate(Length feed, Turning turning) {
    return feed * turning;
}

Time cutting_time(Length way, Length feed, Turning turning) {
    return way / feed_rate(feed, turning);
}

} // namespace ringfill
