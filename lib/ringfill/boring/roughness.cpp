#include <ringfill/boring/roughness.hpp>

namespace ringfill {

Roughness roughness(Length feed, Length nose_radius) {
    const Length height = feed * feed / (8.0 * nose_radius);
    return {height, height / 4.0};
}

} // namespace ringfill
