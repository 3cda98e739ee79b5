#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <range/v3/algorithm/minmax_element.hpp>
#include <range/v3/algorithm/upper_bound.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/time_text.hpp>

namespace ringfill {
namespace {

constexpr std::size_t across = 60;
constexpr std::size_t down = 12;

/// The temperature of the curve at a time inside it.
double temperature_at(const std::vector<CurvePoint>& curve, double seconds) {
    const auto time_of = [](const CurvePoint& point) { return point.time.value(); };
    const auto after = ranges::upper_bound(curve, seconds, {}, time_of);
    const double before = (after - 1)->temperature.value();
    if (after == curve.end())
        return before;
    const double share = (seconds - time_of(*(after - 1))) / (time_of(*after) - time_of(*(after - 1)));
    return before + share * (after->temperature.value() - before);
}

} // namespace

std::string curve_plot(const BossRun& boss_run, UnitSystem units) {
    const auto& curve = boss_run.run.curve;
    const Time end = curve.back().time;
    if (!(end > Time()))
        return {};
    const auto [minimum, maximum] = std::pair(boss_run.settings.minimum, boss_run.settings.maximum);
    const auto [coldest, hottest] = ranges::minmax_element(curve, {}, &CurvePoint::temperature);
    const double low = std::min(minimum, coldest->temperature).value();
    const double high = std::max(std::max(maximum, hottest->temperature).value(), low + 1);
    const auto row_of = [&](double kelvin) {
        const double share = std::clamp((high - kelvin) / (high - low), 0.0, 1.0);
        return static_cast<std::size_t>(std::lround(share * (down - 1)));
    };
    Rows rows(down, {"", "|" + std::string(across, ' ')});
    for (const Temperature& limit : {minimum, maximum})
        rows[row_of(limit.value())][1] = "|" + std::string(across, '-');
    // Each column shows every row the curve passes in its stretch of time, so that no peak is lost.
    constexpr int steps = 16;
    for (std::size_t column = 0; column < across; ++column)
        for (int i = 0; i <= steps; ++i) {
            const double at = (static_cast<double>(column) + static_cast<double>(i) / steps) / across;
            rows[row_of(temperature_at(curve, at * end.value()))][1][column + 1] = '#';
        }
    rows.front()[0] = show(in_si<Temperature>(high), units);
    rows.back()[0] = show(in_si<Temperature>(low), units);
    rows[row_of(minimum.value())][0] = show_exact(minimum, units) + " min";
    rows[row_of(maximum.value())][0] = show_exact(maximum, units) + " max";
    rows.push_back({"", fmt::format("0{:>{}}", show(end), across)});
    return table(rows, {true, false});
}

} // namespace ringfill
