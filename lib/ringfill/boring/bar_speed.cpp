#include <ringfill/boring/bar_speed.hpp>

#include <algorithm>
#include <numbers>

namespace ringfill {

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

} // namespace ringfill
