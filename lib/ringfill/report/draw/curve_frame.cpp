#include <ringfill/report/draw/curve_frame.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <ringfill/report/draw/label_places.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double hair = 0.12; ///< [mm]

double degrees_at(double kelvin, UnitSystem units) {
    return units == UnitSystem::metric ? kelvin - factor::celsius_zero
                                       : (kelvin - factor::fahrenheit_zero) / factor::kelvin_per_fahrenheit;
}

double kelvin_at(double degrees, UnitSystem units) {
    return (units == UnitSystem::metric ? celsius(degrees) : fahrenheit(degrees)).value();
}

} // namespace

std::vector<double> round_steps(double low, double high, int most) {
    std::vector<double> steps;
    if (!(high > low) || most < 1)
        return steps;
    double step = 0;
    double decade = std::pow(10, std::floor(std::log10((high - low) / most)));
    while (step == 0) {
        for (const double part : {1.0, 2.0, 5.0})
            if (step == 0 && std::floor(high / (part * decade)) - std::ceil(low / (part * decade)) < most)
                step = part * decade;
        decade *= 10;
    }
    const double first = std::ceil(low / step - 1e-9);
    const int more = static_cast<int>(std::floor(high / step + 1e-9) - first); // about `most`
    for (int i = 0; i <= more; ++i)
        steps.push_back((first + i) * step);
    return steps;
}

std::string curve_path(const CurveFrame& frame, const std::vector<CurvePoint>& curve) {
    std::vector<PaperPoint> kept;
    for (std::size_t begin = 0; begin < curve.size();) {
        const double column = std::floor(frame.x(curve[begin].time.value()) / hair);
        std::size_t end = begin;
        std::size_t hottest = begin;
        std::size_t coldest = begin;
        for (; end < curve.size() && std::floor(frame.x(curve[end].time.value()) / hair) == column; ++end) {
            if (curve[end].temperature > curve[hottest].temperature)
                hottest = end;
            if (curve[end].temperature < curve[coldest].temperature)
                coldest = end;
        }
        std::vector<std::size_t> chosen{begin, hottest, coldest, end - 1};
        std::ranges::sort(chosen);
        const auto doubled = std::unique(chosen.begin(), chosen.end());
        chosen.erase(doubled, chosen.end());
        for (const std::size_t i : chosen)
            kept.push_back({frame.x(curve[i].time.value()), frame.y(curve[i].temperature.value())});
        begin = end;
    }
    return kept.size() < 2 ? std::string() : open_path(kept);
}

void draw_axes(Svg& svg, const CurveFrame& frame, UnitSystem units) {
    constexpr double tick = 0.9;
    svg.path(
        open_path({{frame.left, frame.top - 1}, {frame.left, frame.bottom}, {frame.right + 1, frame.bottom}}),
        outline_pen);
    const std::string unit = units == UnitSystem::metric ? "°C" : "°F";
    for (const double degrees : round_steps(degrees_at(frame.low, units), degrees_at(frame.high, units), 7)) {
        const double y = frame.y(kelvin_at(degrees, units));
        svg.line({frame.left - tick, y}, {frame.left, y}, thin_pen);
        svg.text({frame.left - tick - 0.5, y + 0.36 * letter_size}, {svg_number(degrees, 0) + " " + unit},
                 Anchor::end);
    }
    const double hours = frame.end_s / factor::hour;
    for (const double at : round_steps(0, hours, 6)) {
        const double x = frame.x(at * factor::hour);
        svg.line({x, frame.bottom}, {x, frame.bottom + tick}, thin_pen);
        svg.text({x, frame.bottom + tick + 0.4 + letter_rise}, {svg_number(at, 4)}, Anchor::middle);
    }
    svg.text({frame.right + 3.5, frame.bottom + tick + 0.4 + letter_rise}, {"hours"});
}

} // namespace ringfill
