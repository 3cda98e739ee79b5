#include <ringfill/boring/bar.hpp>

#include <algorithm>
#include <numbers>

namespace ringfill {

BarSettings bar_settings(const BoringBar& bar, const Cutting& cutting) {
    BarSettings settings{cutting, bar.stroke, bar.bar_speeds};
    const auto put = [](auto& figure, const auto& given) {
        if (given)
            figure = {*given, "job"};
    };
    put(settings.cutting_speed, bar.cutting_speed);
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
