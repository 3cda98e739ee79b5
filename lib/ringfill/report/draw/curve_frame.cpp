#include <ringfill/report/draw/curve_frame.hpp>

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include <ringfill/report/draw/labels.hpp>
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

constexpr double row_height = 4.3;

/// Steps that share a row.
struct Row {
    std::string_view name;
    bool is_counted;
    HeatStage first;
    HeatStage last;
};

constexpr Row stage_rows[] = {
    {"warm-up", false, HeatStage::warm_up, HeatStage::warm_up},
    {"weld", false, HeatStage::weld, HeatStage::weld},
    {"stop", true, HeatStage::stop, HeatStage::stop},
    {"reheat", true, HeatStage::reheat, HeatStage::reheat},
    {"hold", false, HeatStage::post_heat, HeatStage::post_heat},
    {"cool", false, HeatStage::cool_to_rough, HeatStage::cool_to_finish},
};

struct Bars {
    std::vector<std::pair<double, double>> ends; ///< x from and to
    int count = 0;
};

/// Where a row's steps are; bars that touch on the paper become one.
Bars bars_of(const CurveFrame& frame, const HeatRun& run, const Row& row) {
    constexpr double least = 0.2; // a short step is seen all the same
    Bars found;
    Time at;
    for (const HeatStep& step : run.steps) {
        const Time begin = at;
        at += step.time;
        if (step.stage < row.first || step.stage > row.last)
            continue;
        ++found.count;
        const double from = frame.x(begin.value());
        const double to = std::max(from + least, frame.x(at.value()));
        if (!found.ends.empty() && from - found.ends.back().second < 0.02)
            found.ends.back().second = to;
        else
            found.ends.emplace_back(from, to);
    }
    return found;
}

void draw_bars(Svg& svg, const Bars& bars, double y, double width) {
    std::string path;
    for (const auto& [from, to] : bars.ends)
        path += open_path({{from, y}, {to, y}});
    svg.path(path, {width, {}});
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
        std::sort(chosen.begin(), chosen.end());
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

double draw_stage_rows(Svg& svg, const CurveFrame& frame, const HeatBalance& balance, double y) {
    for (const Row& row : stage_rows) {
        const Bars first = bars_of(frame, balance.hot.run, row);
        const Bars second = balance.plated ? bars_of(frame, balance.plated->run, row) : Bars();
        if (first.count + second.count == 0)
            continue;
        const double base = y + letter_rise;
        svg.text({frame.left - 1.4, base}, {std::string(row.name)}, Anchor::end);
        draw_bars(svg, first, base - 1.5, 1.5);
        draw_bars(svg, second, base - 0.2, 0.6);
        if (row.is_counted)
            svg.text({frame.right + 3.5, base},
                     {balance.plated
                          ? fmt::format("{} (thin: {})", first.count, second.count)
                          : fmt::format("{} {}{}", first.count, row.name, first.count == 1 ? "" : "s")});
        y += row_height;
    }
    svg.line({frame.left, frame.bottom}, {frame.left, y}, thin_pen);
    return y;
}

} // namespace ringfill
