#include <ringfill/report/draw/worn_outline.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <ringfill/survey/eccentric_circle.hpp>
#include <ringfill/survey/station.hpp>

namespace ringfill {
namespace {

constexpr double turn = 2 * std::numbers::pi;
constexpr std::size_t least_steps = 360;

/// Closer to the axis than this a centre counts as on it: no gauge tells it [m].
constexpr double on_axis = 1e-6;

std::vector<Station> stations_of(const WornDiameter&) {
    return {};
}

} // namespace

WornOutline::WornOutline(const WornBore& bore, const Survey& survey)
    : largest_station_(survey.largest_station) {
    if (const auto* round = std::get_if<WornDiameter>(&bore.worn))
        round_ = *round;
    for (const Station& station : std::visit([](const auto& form) { return stations_of(form); }, bore.worn)) {
        depths_.push_back(station.depth);
        stations_.emplace_back(station.radii);
        readings_ = station.radii.size();
    }
}

std::vector<Length> WornOutline::radii() const {
    const std::size_t grid = std::max<std::size_t>(readings_, 1);
    const std::size_t steps = grid * ((least_steps + grid - 1) / grid);
    std::vector<Length> all;
    for (std::size_t i = 0; i < steps; ++i)
        all.push_back(radius(in_si<Angle>(turn * static_cast<double>(i) / static_cast<double>(steps))));
    return all;
}

Length WornOutline::radius(Angle clock) const {
    if (stations_.empty())
        return eccentric_radius(round_.diameter / 2.0, round_.offset, clock - round_.offset_clock);
    return stations_[largest_station_](clock);
}

Length WornOutline::radius(Angle clock, Length depth) const {
    if (stations_.size() < 2)
        return radius(clock);
    const auto after = std::upper_bound(depths_.begin(), depths_.end(), depth);
    if (after == depths_.begin())
        return stations_.front()(clock);
    if (after == depths_.end())
        return stations_.back()(clock);
    const auto i = static_cast<std::size_t>(after - depths_.begin());
    const double share = ((depth - depths_[i - 1]) / (depths_[i] - depths_[i - 1])).value();
    const Length before = stations_[i - 1](clock);
    return before + share * (stations_[i](clock) - before);
}

std::optional<ClockRadius> WornOutline::centre() const {
    ClockRadius off{round_.offset, round_.offset_clock};
    if (!stations_.empty()) {
        if (readings_ < 3)
            return std::nullopt;
        const Interpolant& outline = stations_[largest_station_];
        const double a = outline.cosines().front().value();
        const double b = outline.sines().front().value();
        off = {in_si<Length>(std::hypot(a, b)), in_si<Angle>(std::atan2(b, a))};
    }
    if (!(off.radius.value() > on_axis))
        return std::nullopt;
    off.clock = in_si<Angle>(std::fmod(off.clock.value() + turn, turn));
    return off;
}

} // namespace ringfill
