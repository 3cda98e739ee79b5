#include <ringfill/report/draw/drawn_bore.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include <ringfill/report/draw/labels.hpp>
#include <ringfill/survey/worn_surface.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double turn = 2 * std::numbers::pi;
constexpr std::size_t least_steps = 360;

/// Closer to the axis than this a centre counts as on it: no gauge tells it [m].
constexpr double on_axis = 1e-6;

/// The edges of a hole, thinner where they lie close [width in mm of paper]. Broken: nobody says where it
/// goes.
Pen hole_pen(bool goes_through, double width) {
    if (!goes_through)
        return removed_pen;
    return width < 1.5 ? thin_pen : outline_pen;
}

} // namespace

WornOutline::WornOutline(const WornBore& bore, const Survey& survey)
    : largest_station_(survey.largest_station) {
    if (const auto* round = std::get_if<WornDiameter>(&bore.worn))
        round_ = *round;
    for (const WornStation& station : stations_of(bore.worn)) {
        depths_.push_back(station.depth);
        stations_.emplace_back(station.readings);
        readings_ = station.readings.size();
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

DrawnBore drawn_bore(const WornBore& bore, const BorePlan& plan, UnitSystem units) {
    const Build& build = plan.build;
    DrawnBore drawn{bore,
                    plan,
                    units,
                    WornOutline(bore, plan.survey),
                    build.skimmed,
                    mm(build.skim_radius),
                    mm(build.finish_radius),
                    mm(build.weld_to_radius),
                    mm(plan.layering.end_radius),
                    mm(plan.layers.back().radius_after),
                    {},
                    std::nullopt,
                    plan.survey.largest};
    for (const Layer& layer : plan.layers)
        drawn.layers.push_back(mm(layer.radius_after));
    if (bore.boss_diameter)
        drawn.boss = mm(*bore.boss_diameter) / 2;
    return drawn;
}

double DrawnBore::least_layer() const {
    double before = skim;
    double least = before;
    for (const double radius : layers) {
        least = std::min(least, before - radius);
        before = radius;
    }
    return std::max(least, 0.0);
}

std::size_t DrawnBore::labelled_layers_step() const {
    constexpr std::size_t most = 4;
    for (std::size_t decade = 1;; decade *= 10)
        for (const std::size_t part : {1U, 2U, 5U})
            if (layers.size() / (part * decade) <= most)
                return part * decade;
}

std::string DrawnBore::diameter(double radius_mm) const {
    return held_together("Ø " + show(millimetres(2 * radius_mm), units));
}

std::string DrawnBore::length(Length length) const {
    return held_together(show(length, units));
}

std::string DrawnBore::sizes_in_words() const {
    std::string text = skimmed ? fmt::format("Skim to {}. ", diameter(skim))
                               : "No skim: the weld goes on the worn surface as it is. ";
    text +=
        fmt::format("{} {} to {}", layers.size(), layers.size() == 1 ? "layer" : "layers", diameter(weld_to));
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

Pen layer_pen(double spacing) {
    return {std::clamp(0.3 * spacing, 0.04, thin_pen.width), {}};
}

void draw_hole(Svg& svg, const DrawnBore& drawn, const Hole& hole, double from, double scale,
               const HolePoint& at) {
    const bool through = hole.other_end && *hole.other_end != "blind";
    const double to = through ? drawn.outside() : (from + drawn.outside()) / 2;
    svg.cover({at(from, -1), at(to, -1), at(to, 1), at(from, 1)}, no_pen);
    for (const double side : {-1.0, 1.0})
        svg.line(at(from, side), at(to, side), hole_pen(through, mm(hole.diameter) * scale));
    svg.line(at(from, 0), at(drawn.outside(), 0), chain_pen);
}

} // namespace ringfill
