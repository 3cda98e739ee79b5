#include <ringfill/report/draw/curve_frame.hpp>

#include <algorithm>
#include <cmath>
#include <set>

#include <fmt/format.h>

#include <range/v3/algorithm/max_element.hpp>
#include <range/v3/algorithm/min_element.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/report/draw/labels.hpp>
#include <ringfill/say/time_sentences.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double hair = 0.12; ///< [mm]

/// Steps that share a row.
struct Row {
    std::string_view name;
    HeatStage first;
    HeatStage last;
    bool is_counted = false;
};

constexpr Row stage_rows[] = {
    {"warm-up", HeatStage::warm_up, HeatStage::make_ready},
    {"weld", HeatStage::weld, HeatStage::weld},
    {"rest", HeatStage::rest, HeatStage::rest, true},
    {"reheat", HeatStage::reheat, HeatStage::reheat, true},
    {"hold", HeatStage::post_heat, HeatStage::post_heat},
    {"cool", HeatStage::cool_to_rough, HeatStage::cool_to_finish},
};

/// Draws a row's steps as bars; those that touch on the paper become one. @return how many steps there are.
int draw_bars(Svg& svg, const CurveFrame& frame, const HeatRun& run, const Row& row, double y, double width) {
    constexpr double least = 0.2; // a short step is seen all the same
    std::vector<std::pair<double, double>> bars;
    int count = 0;
    Time at;
    for (const HeatStep& step : run.steps) {
        const double from = frame.x(at.value());
        at += step.time;
        if (step.stage < row.first || step.stage > row.last)
            continue;
        ++count;
        const double to = std::max(from + least, frame.x(at.value()));
        if (!bars.empty() && from - bars.back().second < 0.02)
            bars.back().second = to;
        else
            bars.emplace_back(from, to);
    }
    const auto line = [y](const auto& bar) { return open_path({{bar.first, y}, {bar.second, y}}); };
    svg.path(listed(bars, "", line), {width, {}});
    return count;
}

} // namespace

std::vector<double> round_steps(double low, double high, int most) {
    std::vector<double> steps;
    if (!(high > low))
        return steps;
    double step = 0;
    double decade = std::pow(10, std::floor(std::log10((high - low) / most)));
    for (; step == 0; decade *= 10)
        for (const double part : {5.0, 2.0, 1.0})
            if (std::floor(high / (part * decade)) - std::ceil(low / (part * decade)) < most)
                step = part * decade;
    const double first = std::ceil(low / step - 1e-9);
    const int more = static_cast<int>(std::floor(high / step + 1e-9) - first); // about `most`
    for (int i = 0; i <= more; ++i)
        steps.push_back((first + i) * step);
    return steps;
}

std::string curve_path(const CurveFrame& frame, const std::vector<CurvePoint>& curve) {
    const auto column = [&](const CurvePoint& point) {
        return std::floor(frame.x(point.time.value()) / hair);
    };
    PaperPoints kept;
    for (auto begin = curve.begin(); begin != curve.end();) {
        const auto end = std::find_if(begin, curve.end(),
                                      [&](const auto& point) { return column(point) != column(*begin); });
        const auto hottest = ranges::max_element(begin, end, {}, &CurvePoint::temperature);
        const auto coldest = ranges::min_element(begin, end, {}, &CurvePoint::temperature);
        for (const auto& point : std::set{begin, hottest, coldest, end - 1})
            kept.push_back({frame.x(point->time.value()), frame.y(point->temperature.value())});
        begin = end;
    }
    return kept.size() < 2 ? std::string() : open_path(kept);
}

void draw_axes(Svg& svg, const CurveFrame& frame, UnitSystem units) {
    constexpr double tick = 0.9;
    const auto [left, right, top, bottom, end_s, low, high] = frame;
    svg.path(open_path({{left, top - 1}, {left, bottom}, {right + 1, bottom}}), outline_pen);
    const bool is_metric = units == UnitSystem::metric;
    const double zero = is_metric ? factor::celsius_zero : factor::fahrenheit_zero;
    const double degree = is_metric ? 1 : factor::kelvin_per_fahrenheit;
    for (const double degrees : round_steps((low - zero) / degree, (high - zero) / degree, 7)) {
        const double y = frame.y(zero + degree * degrees);
        svg.line({left - tick, y}, {left, y}, thin_pen);
        svg.text({left - tick - 0.5, y + half_letter}, {svg_number(degrees, 0) + (is_metric ? " °C" : " °F")},
                 Anchor::end);
    }
    const double below = bottom + tick + 0.4 + letter_rise;
    for (const double hours : round_steps(0, end_s / factor::hour, 6)) {
        const double x = frame.x(hours * factor::hour);
        svg.line({x, bottom}, {x, bottom + tick}, thin_pen);
        svg.text({x, below}, {svg_number(hours, 4)}, Anchor::middle);
    }
    svg.text({right + 3.5, below}, {"hours"});
}

double draw_stage_rows(Svg& svg, const CurveFrame& frame, const HeatBalance& balance, double y) {
    for (const Row& row : stage_rows) {
        const double base = y + letter_rise;
        const int thick = draw_bars(svg, frame, balance.hot.run, row, base - 1.5, 1.5);
        const int thin =
            balance.plated ? draw_bars(svg, frame, balance.plated->run, row, base - 0.2, 0.6) : 0;
        if (thick + thin == 0)
            continue;
        svg.text({frame.left - 1.4, base}, {std::string(row.name)}, Anchor::end);
        if (row.is_counted)
            svg.text({frame.right + 3.5, base},
                     {balance.plated ? fmt::format("{} (thin: {})", thick, thin) : counted(thick, row.name)});
        y += 4.3;
    }
    svg.line({frame.left, frame.bottom}, {frame.left, y}, thin_pen);
    return y;
}

} // namespace ringfill
