#include <ringfill/boring/set_ups.hpp>

#include <algorithm>
#include <cmath>

namespace ringfill {

int set_ups(Length welded_length, std::optional<Length> stroke) {
    if (!stroke)
        return 1;
    const double count = std::ceil((welded_length / *stroke).value() - 1e-9);
    return static_cast<int>(std::clamp<double>(count, 1, most_set_ups + 1));
}

} // namespace ringfill
