#include <ringfill/heat/warming_rate.hpp>

#include <ringfill/units/factor.hpp>

namespace ringfill {

Warming kept_to_rate(const Warming& fast, double rise_K, std::optional<double> most_K_per_h) {
    if (!most_K_per_h)
        return fast;
    const Time slowest = in_si<Time>(rise_K / *most_K_per_h * factor::hour);
    if (slowest <= fast.time)
        return fast;
    const double longer = slowest.value() / fast.time.value();
    const Energy lost = longer * fast.lost;
    return {slowest, fast.heat + lost - fast.lost, lost};
}

} // namespace ringfill
