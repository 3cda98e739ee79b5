#include <ringfill/report/draw/drawn_bore.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>

#include <ringfill/report/draw/curve_frame.hpp>
#include <ringfill/say/time_sentences.hpp>
#include <ringfill/survey/worn_surface.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double turn = 2 * std::numbers::pi;
constexpr int least_steps = 360;

/// Closer to the axis than this a centre counts as on it: no gauge tells it [m].
constexpr double on_axis = 1e-6;

} // namespace

WornOutline::WornOutline(const WornBore& bore, const Survey& survey)
    : largest_station_(survey.largest_station), readings_(survey.readings) {
    if (const Worn& worn = bore.worn; worn.diameter) {
        round_ = *worn.diameter / 2.0;
        off_ = {worn.offset.value_or(Length()), worn.offset_clock.value_or(Angle())};
    }
    for (const WornStation& station : stations_of(bore.worn)) {
        depths_.push_back(station.depth);
        stations_.emplace_back(station.radii);
    }
}

int WornOutline::steps() const {
    const int grid = std::max(static_cast<int>(readings_), 1);
    return grid * ((least_steps + grid - 1) / grid);
}

Length WornOutline::radius(Angle clock) const {
    return stations_.empty() ? eccentric_radius(round_, off_.radius, clock - off_.clock)
                             : stations_[largest_station_](clock);
}

Length WornOutline::radius(Angle clock, Length depth) const {
    if (stations_.size() < 2)
        return radius(clock);
    const auto after = std::upper_bound(depths_.begin() + 1, depths_.end() - 1, depth) - depths_.begin();
    const auto i = static_cast<std::size_t>(after);
    const double share = ((depth - depths_[i - 1]) / (depths_[i] - depths_[i - 1])).value();
    const Length before = stations_[i - 1](clock);
    return before + std::clamp(share, 0.0, 1.0) * (stations_[i](clock) - before);
}

std::optional<ClockRadius> WornOutline::centre() const {
    ClockRadius off = off_;
    if (readings_ > 2) {
        const Interpolant& outline = stations_[largest_station_];
        const double a = outline.cosines.front().value();
        const double b = outline.sines.front().value();
        off = {in_si<Length>(std::hypot(a, b)), in_si<Angle>(std::atan2(b, a))};
    }
    if (!(off.radius.value() > on_axis))
        return std::nullopt;
    off.clock = in_si<Angle>(std::fmod(off.clock.value() + turn, turn));
    return off;
}

double DrawnBore::least_layer() const {
    double least = skim;
    for (std::size_t n = 1; n <= layers(); ++n)
        least = std::min(least, layer(n - 1) - layer(n));
    return std::max(least, 0.0);
}

bool DrawnBore::is_labelled(std::size_t layer) const {
    return layer == 1 ||
           ranges::contains(round_steps(1, static_cast<double>(layers()), 4), static_cast<double>(layer));
}

std::string DrawnBore::sizes_in_words() const {
    std::string text = skimmed ? fmt::format("Skim to {}. ", diameter(skim))
                               : "No skim: the weld goes on the worn surface as it is. ";
    text += fmt::format("{} to {}", counted(static_cast<int>(layers()), "layer"), diameter(weld_to));
    if (is_average())
        text += fmt::format(" at the deepest wear, on average to {}", diameter(end));
    if (passes_target())
        text += fmt::format(", past the {} asked for", diameter(target));
    return text + fmt::format("; finish {}.", diameter(finish));
}

std::string clock_text(Angle clock) {
    const int minutes = static_cast<int>(std::lround(degrees(clock) * 2)) % 720; // an hour is 30°
    const int hour = minutes / 60;
    return held_together(fmt::format("{} ({}:{:02})", show(clock), hour == 0 ? 12 : hour, minutes % 60));
}

void draw_hole(Svg& svg, const DrawnBore& drawn, const Hole& hole, double from, double scale,
               const HolePoint& at) {
    const bool through = hole.other_end && *hole.other_end != "blind";
    const double to = through ? drawn.outside : (from + drawn.outside) / 2;
    // Thinner where the edges lie close; broken: nobody says where it goes.
    const Pen& pen = !through ? removed_pen : mm(hole.diameter) * scale < 1.5 ? thin_pen : outline_pen;
    svg.cover({at(from, -1), at(to, -1), at(to, 1), at(from, 1)}, no_pen);
    for (const double side : {-1.0, 1.0})
        svg.line(at(from, side), at(to, side), pen);
    svg.line(at(from, 0), at(drawn.outside, 0), chain_pen);
}

} // namespace ringfill
