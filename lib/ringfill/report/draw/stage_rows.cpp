#include <ringfill/report/draw/stage_rows.hpp>

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include <ringfill/report/draw/label_places.hpp>

namespace ringfill {
namespace {

constexpr double row_height = 4.3;
constexpr Pen first_bar{1.5, {}};
constexpr Pen second_bar{0.6, {}};

/// Steps that share a row.
struct Row {
    std::string_view name;
    std::string_view counted; ///< one of them, where their number is told
    std::vector<HeatStage> stages;
};

const std::array<Row, 6>& rows() {
    static const std::array<Row, 6> all = {
        Row{"warm-up", {}, {HeatStage::warm_up}},
        Row{"weld", {}, {HeatStage::weld}},
        Row{"stop", "stop", {HeatStage::stop}},
        Row{"reheat", "reheat", {HeatStage::reheat}},
        Row{"hold", {}, {HeatStage::post_heat}},
        Row{"cool", {}, {HeatStage::cool_to_rough, HeatStage::cool_to_finish}},
    };
    return all;
}

struct Bars {
    std::vector<std::pair<double, double>> bars; ///< x from and to
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
        if (std::ranges::find(row.stages, step.stage) == row.stages.end())
            continue;
        ++found.count;
        const double from = frame.x(begin.value());
        const double to = std::max(from + least, frame.x(at.value()));
        if (!found.bars.empty() && from - found.bars.back().second < 0.02)
            found.bars.back().second = to;
        else
            found.bars.emplace_back(from, to);
    }
    return found;
}

void draw_bars(Svg& svg, const Bars& bars, double y, const Pen& pen) {
    std::string path;
    for (const auto& [from, to] : bars.bars)
        path += open_path({{from, y}, {to, y}});
    svg.path(path, pen);
}

std::string count_text(const Row& row, int count) {
    return fmt::format("{} {}{}", count, row.counted, count == 1 ? "" : "s");
}

} // namespace

double draw_stage_rows(Svg& svg, const CurveFrame& frame, const HeatBalance& balance, double y) {
    for (const Row& row : rows()) {
        const Bars first = bars_of(frame, balance.hot.run, row);
        const Bars second = balance.plated ? bars_of(frame, balance.plated->run, row) : Bars();
        if (first.count + second.count == 0)
            continue;
        const double base = y + letter_rise;
        svg.text({frame.left - 1.4, base}, {std::string(row.name)}, Anchor::end);
        draw_bars(svg, first, base - 1.5, first_bar);
        draw_bars(svg, second, base - 0.2, second_bar);
        if (!row.counted.empty())
            svg.text({frame.right + 3.5, base},
                     {balance.plated ? fmt::format("{} (thin: {})", first.count, second.count)
                                     : count_text(row, first.count)});
        y += row_height;
    }
    svg.line({frame.left, frame.bottom}, {frame.left, y}, thin_pen);
    return y;
}

} // namespace ringfill
