#include <ringfill/report/draw/drawings.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/report/draw/curve_frame.hpp>
#include <ringfill/report/draw/labels.hpp>

namespace ringfill {
namespace {

constexpr Pen curve_pen{0.45, {}};
constexpr Pen plated_pen{0.35, "1.6 0.8"};

/// Minimum and maximum as they are shown: exact where rounding would put the one over the other.
std::pair<std::string, std::string> limits_of(const HeatRunSettings& settings, UnitSystem units) {
    const bool exact = rounding_crosses(settings.minimum, settings.maximum, units);
    return {
        held_together(exact ? show_exact(settings.minimum, units) : show_minimum(settings.minimum, units)),
        held_together(exact ? show_exact(settings.maximum, units) : show_maximum(settings.maximum, units))};
}

/// A temperature that a line is drawn at.
struct Level {
    Temperature at;
    double width;
    std::string_view dashes;
    std::string text;
    int rank;
};

std::vector<Level> levels_of(const HeatRunSettings& settings, UnitSystem units) {
    const auto [minimum, maximum] = limits_of(settings, units);
    const auto shown = [units](Temperature at) { return held_together(show(at, units)); };
    std::vector<Level> levels{
        {settings.maximum, 0.3, {}, "max " + maximum, 0},
        {settings.minimum, 0.3, {}, "min " + minimum, 0},
        {settings.rough_below, 0.18, {}, "rough under " + shown(settings.rough_below), 2},
        {settings.finish_below, 0.18, {}, "finish under " + shown(settings.finish_below), 2}};
    if (settings.hold_at)
        levels.push_back(
            {*settings.hold_at, 0.18, removed_pen.dashes, "hold at " + shown(*settings.hold_at), 1});
    return levels;
}

CurveFrame frame_of(const HeatBalance& balance) {
    const HeatRunSettings& settings = balance.hot.settings;
    CurveFrame frame;
    frame.low = std::min(balance.ambient, settings.finish_below).value();
    frame.high = std::max(settings.maximum, settings.rough_below).value();
    frame.end_s = 0;
    for (const BossRun* boss : {&balance.hot, &balance.cold()})
        for (const CurvePoint& point : boss->run.curve) {
            frame.end_s = std::max(frame.end_s, point.time.value());
            frame.low = std::min(frame.low, point.temperature.value());
            frame.high = std::max(frame.high, point.temperature.value());
        }
    const double air = 0.04 * (frame.high - frame.low);
    frame.high += air;
    frame.low -= air;
    return frame;
}

std::string run_in_words(const BossRun& boss, UnitSystem units) {
    const HeatRun& run = boss.run;
    if (!(run.curve.back().time > Time()))
        return "nothing: it does not come to its minimum. ";
    std::string text = fmt::format("warm-up {}, {} {}, {} {}, peak {}", show(run.warm_up), run.stops,
                                   run.stops == 1 ? "stop" : "stops", run.reheats,
                                   run.reheats == 1 ? "reheat" : "reheats", show(run.peak, units));
    if (run.post_heating > Time())
        text += ", hold " + show(run.post_heating);
    if (run.cooling_to_rough)
        text +=
            fmt::format(", {} to {}", show(*run.cooling_to_rough), show(boss.settings.rough_below, units));
    if (run.cooling_to_finish)
        text += fmt::format(", {} more to {}", show(*run.cooling_to_finish),
                            show(boss.settings.finish_below, units));
    return text + ". ";
}

std::string plate_words(const HeatBalance& balance, UnitSystem units) {
    return "with one plate of " + held_together(show(balance.plated->plates.front(), units)) + " on it";
}

std::string bad_end(const HeatBalance& balance) {
    return fmt::format("It does not end well: {}.", words_of(end_of(balance)));
}

std::string in_words(const HeatBalance& balance, UnitSystem units) {
    const auto [minimum, maximum] = limits_of(balance.hot.settings, units);
    std::string text = fmt::format("A ring begins between {} and {}. ", minimum, maximum);
    if (balance.plated)
        text += "With nothing that carries heat off: ";
    text += run_in_words(balance.hot, units);
    if (balance.plated)
        text +=
            fmt::format("Dashed, {}: {}", plate_words(balance, units), run_in_words(*balance.plated, units));
    if (end_of(balance) != BalanceEnd::done)
        text += bad_end(balance);
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
        svg.line({frame.left, y}, {frame.right, y}, {level.width, level.dashes});
        labels.push_back({level.text, {frame.right, y}, level.rank});
    }
    if (balance.plated)
        svg.path(curve_path(frame, balance.plated->run.curve), plated_pen);
    svg.path(curve_path(frame, balance.hot.run.curve), curve_pen);
    draw_axes(svg, frame, units);
    draw_labels(svg, labels, {62, 84.4, 1, 44});
    double y = draw_stage_rows(svg, frame, balance, frame.bottom + 7.2);
    if (balance.plated)
        y = draw_key(svg, balance, y + 1, units);
    if (end_of(balance) != BalanceEnd::done)
        y += draw_note(svg, bad_end(balance), y);
    return svg.drawing(
        {id, "Temperature of the boss over the time", in_words(balance, units), paper_width, y + 1, 0});
}

} // namespace ringfill
