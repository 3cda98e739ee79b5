#include <ringfill/heat/measuring_point.hpp>

#include <algorithm>

namespace ringfill {

Length measuring_distance(Length wall) {
    return wall > millimetres(50) ? thick_wall_distance : std::min(4.0 * wall, millimetres(50));
}

Length heated_zone(Length wall) {
    return std::max(wall, millimetres(76.2));
}

Time equalising_time(Length wall) {
    return in_si<Time>(120) * (wall / millimetres(25)).value();
}

} // namespace ringfill
