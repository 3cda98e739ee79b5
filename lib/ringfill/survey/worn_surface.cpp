#include <ringfill/survey/worn_surface.hpp>

#include <cmath>
#include <numbers>

#include <range/v3/numeric/accumulate.hpp>
#include <range/v3/view/transform.hpp>
#include <range/v3/view/zip.hpp>

namespace ringfill {
namespace {

constexpr double turn = 2 * std::numbers::pi;

Angle clock_of(std::size_t i, std::size_t count) {
    return in_si<Angle>(turn * static_cast<double>(i) / static_cast<double>(count));
}

/// Mean over the clock readings of the frustums between two stations, without π [m³].
Volume between(const WornStation& near, const WornStation& far) {
    Area sum;
    for (const auto& [a, b] : ranges::views::zip(near.radii, far.radii))
        sum += a * a + a * b + b * b;
    return (far.depth - near.depth) * sum / (3.0 * static_cast<double>(near.radii.size()));
}

Survey survey_round(const Worn& worn, Length length) {
    const Length r = *worn.diameter / 2.0;
    const Length offset = worn.offset.value_or(Length());
    const double clock = worn.offset_clock.value_or(Angle()).value();
    return {.largest = {r + offset, in_si<Angle>(std::fmod(clock, turn))},
            .smallest = {r - offset, in_si<Angle>(std::fmod(clock + turn / 2, turn))},
            .worn_volume = std::numbers::pi * r * r * length};
}

} // namespace

Length eccentric_radius(Length r, Length e, Angle from_offset) {
    const Length across = e * std::sin(from_offset.value());
    return e * std::cos(from_offset.value()) + in_si<Length>(std::sqrt((r * r - across * across).value()));
}

Area section(const std::vector<Length>& radii) {
    const Area squares =
        ranges::accumulate(radii | ranges::views::transform([](Length r) -> Area { return r * r; }), Area());
    return std::numbers::pi * squares / static_cast<double>(radii.size());
}

Interpolant::Interpolant(const std::vector<Length>& radii)
    : mean(ranges::accumulate(radii, Length()) / static_cast<double>(radii.size())) {
    const std::size_t n = radii.size();
    std::vector<double> cosine;
    std::vector<double> sine;
    for (std::size_t k = 0; k < n; ++k) {
        cosine.push_back(std::cos(clock_of(k, n).value()));
        sine.push_back(std::sin(clock_of(k, n).value()));
    }
    for (std::size_t j = 1; 2 * j <= n; ++j) {
        Length a;
        Length b;
        for (std::size_t k = 0; k < n; ++k) {
            // j k less whole turns, in integers: each angle is one of the n exact ones
            a += radii[k] * cosine[j * k % n];
            b += radii[k] * sine[j * k % n];
        }
        const bool nyquist = 2 * j == n;
        const double weight = (nyquist ? 1.0 : 2.0) / static_cast<double>(n);
        cosines.push_back(weight * a);
        sines.push_back(nyquist ? Length() : Length(weight * b));
    }
}

Length Interpolant::operator()(Angle clock) const {
    // cos and sin of the multiples of the angle by turning one complex number, instead of 2N calls.
    const double step_cos = std::cos(clock.value());
    const double step_sin = std::sin(clock.value());
    double c = 1;
    double s = 0;
    Length radius = mean;
    for (std::size_t j = 0; j < cosines.size(); ++j) {
        const double next = c * step_cos - s * step_sin;
        s = s * step_cos + c * step_sin;
        c = next;
        radius += cosines[j] * c + sines[j] * s;
    }
    return radius;
}

Extremes extremes(const std::vector<Length>& radii) {
    const ClockRadius first{radii.front(), Angle()};
    Extremes found{first, first};
    const auto consider = [&](Length radius, Angle clock) {
        if (radius > found.largest.radius)
            found.largest = {radius, clock};
        if (radius < found.smallest.radius)
            found.smallest = {radius, clock};
    };
    for (std::size_t i = 1; i < radii.size(); ++i)
        consider(radii[i], clock_of(i, radii.size()));
    const Interpolant outline(radii);
    for (std::size_t i = 0; i < search_angles; ++i)
        consider(outline(clock_of(i, search_angles)), clock_of(i, search_angles));
    return found;
}

std::vector<WornStation> stations_of(const Worn& worn) {
    const Angle towards = worn.offset_clock.value_or(Angle());
    std::vector<WornStation> stations = worn.stations;
    for (auto& [depth, radii, diameters] : stations)
        for (std::size_t i = 0; i < 2 * diameters.size(); ++i)
            radii.push_back(eccentric_radius(diameters[i % diameters.size()] / 2.0,
                                             worn.offset.value_or(Length()),
                                             clock_of(i, 2 * diameters.size()) - towards));
    return stations;
}

Volume worn_volume(const std::vector<WornStation>& stations, Length length) {
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
    if (worn.diameter)
        return survey_round(worn, length);
    const std::vector<WornStation> stations = stations_of(worn);
    Survey result{.worn_volume = worn_volume(stations, length),
                  .readings = stations.front().radii.size(),
                  .two_point = !stations.front().diameters.empty()};
    for (std::size_t i = 0; i < stations.size(); ++i) {
        const auto [largest, smallest] = extremes(stations[i].radii);
        if (i == 0 || largest.radius > result.largest.radius) {
            result.largest = largest;
            result.largest_station = i;
        }
        if (i == 0 || smallest.radius < result.smallest.radius) {
            result.smallest = smallest;
            result.smallest_station = i;
        }
    }
    return result;
}

} // namespace ringfill
