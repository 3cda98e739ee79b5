#include <ringfill/survey/worn_surface.hpp>

#include <cmath>
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
    const Extremes first = extremes(stations.front().radii);
    Survey result;
    result.largest = first.largest;
    result.smallest = first.smallest;
    result.worn_volume = worn_volume(stations, length);
    result.readings = stations.front().radii.size();
    for (std::size_t i = 1; i < stations.size(); ++i) {
        const Extremes here = extremes(stations[i].radii);
        if (here.largest.radius > result.largest.radius) {
            result.largest = here.largest;
            result.largest_station = i;
        }
        if (here.smallest.radius < result.smallest.radius) {
            result.smallest = here.smallest;
            result.smallest_station = i;
        }
    }
    return result;
}

Survey survey_form(const WornDiameter& worn, Length length) {
    const Length r = worn.diameter / 2.0;
    const double turn = 2 * std::numbers::pi;
    Survey result;
    result.largest = {r + worn.offset, in_si<Angle>(std::fmod(worn.offset_clock.value(), turn))};
    result.smallest = {r - worn.offset, in_si<Angle>(std::fmod(worn.offset_clock.value() + turn / 2, turn))};
    result.worn_volume = std::numbers::pi * r * r * length;
    return result;
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

bool is_same_all_round(const Survey& survey) {
    return survey.readings == 0 && survey.largest.radius == survey.smallest.radius;
}

Survey survey(const Worn& worn, Length length) {
    return std::visit([length](const auto& form) { return survey_form(form, length); }, worn);
}

} // namespace ringfill
