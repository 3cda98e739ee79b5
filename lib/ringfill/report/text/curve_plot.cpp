#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/layout.hpp>
#include <ringfill/report/text/time_text.hpp>

namespace ringfill {
namespace {

constexpr std::size_t across = 60;
constexpr std::size_t down = 12;

/// The temperature of the curve at a time inside it.
double temperature_at(const std::vector<CurvePoint>& curve, double seconds) {
    const auto after =
        std::upper_bound(curve.begin(), curve.end(), seconds,
                         [](double time, const CurvePoint& point) { return time < point.time.value(); });
    if (after == curve.begin())
        return curve.front().temperature.value();
    if (after == curve.end())
        return curve.back().temperature.value();
    const CurvePoint& before = *(after - 1);
    const double way = after->time.value() - before.time.value();
    const double share = (seconds - before.time.value()) / way;
    return before.temperature.value() + share * (after->temperature.value() - before.temperature.value());
}

/// A canvas of characters with a scale of temperature.
class Canvas {
  public:
    Canvas(double low, double high) : low_(low), high_(high), rows_(down, std::string(across, ' ')) {}

    std::size_t row_of(double kelvin) const {
        const double share = std::clamp((high_ - kelvin) / (high_ - low_), 0.0, 1.0);
        return static_cast<std::size_t>(std::lround(share * (down - 1)));
    }
    void limit(double kelvin) { rows_[row_of(kelvin)].assign(across, '-'); }
    void mark(std::size_t column, double kelvin) { rows_[row_of(kelvin)][column] = '#'; }
    const std::string& row(std::size_t i) const { return rows_[i]; }

  private:
    double low_;
    double high_;
    std::vector<std::string> rows_;
};

} // namespace

std::string curve_plot(const BossRun& one, UnitSystem units) {
    const auto& curve = one.run.curve;
    const double end = curve.back().time.value();
    if (!(end > 0))
        return {};
    double low = one.settings.minimum.value();
    double high = one.settings.maximum.value();
    for (const CurvePoint& point : curve) {
        low = std::min(low, point.temperature.value());
        high = std::max(high, point.temperature.value());
    }
    high = std::max(high, low + 1);
    Canvas canvas(low, high);
    canvas.limit(one.settings.minimum.value());
    canvas.limit(one.settings.maximum.value());
    // Each column shows every row the curve passes in its stretch of time, so that no peak is lost.
    constexpr int steps = 16;
    for (std::size_t column = 0; column < across; ++column)
        for (int i = 0; i <= steps; ++i) {
            const double at = (static_cast<double>(column) + static_cast<double>(i) / steps) / across;
            canvas.mark(column, temperature_at(curve, at * end));
        }
    std::vector<std::string> labels(down);
    labels.front() = show(in_si<Temperature>(high), units);
    labels.back() = show(in_si<Temperature>(low), units);
    labels[canvas.row_of(one.settings.minimum.value())] = show_minimum(one.settings.minimum, units) + " min";
    labels[canvas.row_of(one.settings.maximum.value())] = show_maximum(one.settings.maximum, units) + " max";
    std::vector<std::vector<std::string>> rows;
    for (std::size_t i = 0; i < down; ++i)
        rows.push_back({labels[i], "|" + canvas.row(i)});
    std::size_t widest = 0;
    for (const std::string& label : labels)
        widest = std::max(widest, count_characters(label));
    return table(rows, {true, false}) +
           fmt::format("  {}  0{:>{}}\n", std::string(widest, ' '), show(one.run.curve.back().time), across);
}

} // namespace ringfill
