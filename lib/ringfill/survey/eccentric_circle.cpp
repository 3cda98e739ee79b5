#include <ringfill/survey/eccentric_circle.hpp>

#include <cmath>

namespace ringfill {

Length eccentric_radius(Length r, Length e, Angle from_offset) {
    const Length across = e * std::sin(from_offset.value());
    return e * std::cos(from_offset.value()) + in_si<Length>(std::sqrt((r * r - across * across).value()));
}

} // namespace ringfill
