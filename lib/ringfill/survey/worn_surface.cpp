#include <ringfill/survey/worn_surface.hpp>

#include <numbers>

namespace ringfill {
namespace {

/// Mean over the clock readings of the frustums between two stations, without π [m³].
Volume between(const Station& a, const Station& b) {
    Area sum;
    for (std::size_t i = 0; i < a.radii.size(); ++i)
        sum += a.radii[i] * a.radii[i] + a.radii[i] * b.radii[i] + b.radii[i] * b.radii[i];
    return (b.depth - a.depth) * sum / (3.0 * static_cast<double>(a.radii.size()));
}

Survey survey_stations(const std::vector<Station>& stations, Length length) {
    Survey result{largest(stations.front().radii), smallest(stations.front().radii),
                  worn_volume(stations, length), stations.front().radii.size(), false};
    for (const Station& station : stations) {
        if (const ClockRadius r = largest(station.radii); r.radius > result.largest.radius)
            result.largest = r;
        if (const ClockRadius r = smallest(station.radii); r.radius < result.smallest.radius)
            result.smallest = r;
    }
    return result;
}

Survey survey_form(const WornDiameter& worn, Length length) {
    const Length r = worn.diameter / 2.0;
    const double half_turn = std::numbers::pi;
    const double opposite =
        worn.offset_clock.value() + (worn.offset_clock.value() < half_turn ? half_turn : -half_turn);
    return {{r + worn.offset, worn.offset_clock},
            {r - worn.offset, in_si<Angle>(opposite)},
            std::numbers::pi * r * r * length,
            0,
            false};
}

Survey survey_form(const WornRadii& worn, Length length) {
    return survey_stations(stations_of(worn), length);
}

Survey survey_form(const WornDiameters& worn, Length length) {
    Survey result = survey_stations(stations_of(worn), length);
    result.two_point = true;
    return result;
}

} // namespace

Volume worn_volume(const std::vector<Station>& stations, Length length) {
    Volume volume = section(stations.front().radii) * stations.front().depth +
                    section(stations.back().radii) * (length - stations.back().depth);
    for (std::size_t i = 1; i < stations.size(); ++i)
        volume += std::numbers::pi * between(stations[i - 1], stations[i]);
    return volume;
}

Survey survey(const Worn& worn, Length length) {
    return std::visit([length](const auto& form) { return survey_form(form, length); }, worn);
}

} // namespace ringfill
