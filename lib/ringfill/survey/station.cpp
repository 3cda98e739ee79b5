#include <ringfill/survey/station.hpp>

#include <numbers>

#include <ringfill/survey/eccentric_circle.hpp>

namespace ringfill {

std::vector<Station> stations_of(const WornRadii& worn) {
    std::vector<Station> stations;
    for (const WornStation& read : worn.stations)
        stations.push_back({read.depth, read.readings});
    return stations;
}

std::vector<Station> stations_of(const WornDiameters& worn) {
    std::vector<Station> stations;
    for (const WornStation& read : worn.stations) {
        const std::size_t half_turn = read.readings.size();
        Station station{read.depth, {}};
        for (std::size_t i = 0; i < 2 * half_turn; ++i) {
            const Angle clock =
                in_si<Angle>(std::numbers::pi * static_cast<double>(i) / static_cast<double>(half_turn));
            const Length r = read.readings[i % half_turn] / 2.0;
            station.radii.push_back(eccentric_radius(r, worn.offset, clock - worn.offset_clock));
        }
        stations.push_back(std::move(station));
    }
    return stations;
}

} // namespace ringfill
