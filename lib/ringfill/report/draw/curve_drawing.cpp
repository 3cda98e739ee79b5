#include <ringfill/report/draw/curve_drawing.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/report/draw/curve_frame.hpp>
#include <ringfill/report/draw/label_places.hpp>
#include <ringfill/report/draw/ring_section.hpp>
#include <ringfill/report/draw/stage_rows.hpp>

namespace ringfill {
namespace {

constexpr double paper_width = 85;
constexpr LabelColumn column{62, 84.4, 1, 44};
constexpr Pen curve_pen{0.45, {}};
constexpr Pen plated_pen{0.35, "1.6 0.8"};

std::string minimum_text(const HeatRunSettings& settings, UnitSystem units) {
    return held_together(rounding_crosses(settings.minimum, settings.maximum, units)
                             ? show_exact(settings.minimum, units)
                             : show_minimum(settings.minimum, units));
}

std::string maximum_text(const HeatRunSettings& settings, UnitSystem units) {
    return held_together(rounding_crosses(settings.minimum, settings.maximum, units)
                             ? show_exact(settings.maximum, units)
                             : show_maximum(settings.maximum, units));
}

/// A temperature that a line is drawn at.
struct Level {
    Temperature at;
    Pen pen;
    std::string text;
    int rank;
};

std::vector<Level> levels_of(const HeatRunSettings& settings, UnitSystem units) {
    std::vector<Level> levels{{settings.maximum, outline_pen, "max " + maximum_text(settings, units), 0},
                              {settings.minimum, outline_pen, "min " + minimum_text(settings, units), 0},
                              {settings.rough_below, thin_pen,
                               "rough under " + held_together(show(settings.rough_below, units)), 2},
                              {settings.finish_below, thin_pen,
                               "finish under " + held_together(show(settings.finish_below, units)), 2}};
    if (settings.hold_at)
        levels.push_back(
            {*settings.hold_at, removed_pen, "hold at " + held_together(show(*settings.hold_at, units)), 1});
    return levels;
}

CurveFrame frame_of(const HeatBalance& balance) {
    const HeatRunSettings& settings = balance.hot.settings;
    CurveFrame frame;
    frame.low = std::min(balance.ambient, settings.finish_below).value();
    frame.high = std::max(settings.maximum, settings.rough_below).value();
    frame.end_s = 0;
    for (const BossRun* one : {&balance.hot, &balance.cold()})
        for (const CurvePoint& point : one->run.curve) {
            frame.end_s = std::max(frame.end_s, point.time.value());
            frame.low = std::min(frame.low, point.temperature.value());
            frame.high = std::max(frame.high, point.temperature.value());
        }
    const double air = 0.04 * (frame.high - frame.low);
    frame.high += air;
    frame.low -= air;
    return frame;
}

std::string run_in_words(const BossRun& one, UnitSystem units) {
    const HeatRun& run = one.run;
    if (!(run.curve.back().time > Time()))
        return "nothing: it does not come to its minimum. ";
    std::string text = fmt::format("warm-up {}, {} {}, {} {}, peak {}", show(run.warm_up), run.stops,
                                   run.stops == 1 ? "stop" : "stops", run.reheats,
                                   run.reheats == 1 ? "reheat" : "reheats", show(run.peak, units));
    if (run.post_heating > Time())
        text += ", hold " + show(run.post_heating);
    if (run.cooling_to_rough)
        text += fmt::format(", {} to {}", show(*run.cooling_to_rough), show(one.settings.rough_below, units));
    if (run.cooling_to_finish)
        text += fmt::format(", {} more to {}", show(*run.cooling_to_finish),
                            show(one.settings.finish_below, units));
    return text + ". ";
}

std::string plate_words(const HeatBalance& balance, UnitSystem units) {
    return "with one plate of " + length_text(balance.plated->plates.front(), units) + " on it";
}

std::string in_words(const HeatBalance& balance, UnitSystem units) {
    const HeatRunSettings& settings = balance.hot.settings;
    std::string text = fmt::format("A ring begins between {} and {}. ", minimum_text(settings, units),
                                   maximum_text(settings, units));
    if (balance.plated)
        text += "With nothing that carries heat off: ";
    text += run_in_words(balance.hot, units);
    if (balance.plated)
        text +=
            fmt::format("Dashed, {}: {}", plate_words(balance, units), run_in_words(*balance.plated, units));
    if (end_of(balance) != BalanceEnd::done)
        text += fmt::format("It does not end well: {}.", words_of(end_of(balance)));
    return text;
}

/// What the two curves stand for. @return y below it.
double draw_key(Svg& svg, const HeatBalance& balance, double y, UnitSystem units) {
    const auto entry = [&](const Pen& pen, const std::string& text) {
        const double base = y + letter_rise;
        svg.line({1, base - 1}, {12, base - 1}, pen);
        svg.text({14, base}, {text});
        y += letter_rise + letter_hang + 0.3;
    };
    entry(curve_pen, "nothing carries heat off; thick bars");
    entry(plated_pen, plate_words(balance, units) + "; thin bars");
    return y;
}

} // namespace

std::string curve_drawing(const BorePlan& plan, UnitSystem units, const std::string& id) {
    if (!plan.heat_balance)
        return {};
    const HeatBalance& balance = *plan.heat_balance;
    const CurveFrame frame = frame_of(balance);
    if (!(frame.end_s > 0))
        return {};
    Svg svg;
    std::vector<Label> labels;
    for (const Level& level : levels_of(balance.hot.settings, units)) {
        const double y = frame.y(level.at.value());
        svg.line({frame.left, y}, {frame.right, y}, {level.rank == 0 ? 0.3 : 0.18, level.pen.dashes});
        labels.push_back({level.text, {frame.right, y}, level.rank});
    }
    if (balance.plated)
        svg.path(curve_path(frame, balance.plated->run.curve), plated_pen);
    svg.path(curve_path(frame, balance.hot.run.curve), curve_pen);
    draw_axes(svg, frame, units);
    draw_labels(svg, labels, column);
    double y = draw_stage_rows(svg, frame, balance, frame.bottom + 7.2);
    if (balance.plated)
        y = draw_key(svg, balance, y + 1, units);
    if (end_of(balance) != BalanceEnd::done) {
        const auto lines =
            wrap_label(fmt::format("It does not end well: {}.", words_of(end_of(balance))), paper_width - 2);
        svg.text({1, y + letter_rise}, lines);
        y += letter_rise + letter_hang + line_step * static_cast<double>(lines.size() - 1);
    }
    return svg.drawing(
        {id, "Temperature of the boss over the time", in_words(balance, units), paper_width, y + 1, 0});
}

} // namespace ringfill
