#include <ringfill/report/draw/drawings.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/report/draw/curve_frame.hpp>
#include <ringfill/report/draw/labels.hpp>
#include <ringfill/say/time_sentences.hpp>

namespace ringfill {
namespace {

constexpr Pen curve_pen{0.45, {}};
constexpr Pen plated_pen{0.35, "1.6 0.8"};

/// Minimum and maximum as they are shown.
std::pair<std::string, std::string> limits_of(const HeatRunSettings& settings, UnitSystem units) {
    return {held_together(show_exact(settings.minimum, units)),
            held_together(show_exact(settings.maximum, units))};
}

/// Draws a line at each temperature that the work waits for. @return their labels.
std::vector<Label> draw_levels(Svg& svg, const CurveFrame& frame, const HeatRunSettings& settings,
                               UnitSystem units) {
    std::vector<Label> labels;
    const auto draw = [&](Temperature at, const Pen& pen, const std::string& text, int rank) {
        const double y = frame.y(at.value());
        svg.line({frame.left, y}, {frame.right, y}, pen);
        labels.push_back({text, {frame.right, y}, rank});
    };
    const auto shown = [units](Temperature at) { return held_together(show(at, units)); };
    const auto [minimum, maximum] = limits_of(settings, units);
    constexpr Pen limit_pen{0.3, {}};
    constexpr Pen cool_pen{0.18, {}};
    draw(settings.maximum, limit_pen, "max " + maximum, 0);
    draw(settings.minimum, limit_pen, "min " + minimum, 0);
    draw(settings.rough_below, cool_pen, "rough under " + shown(settings.rough_below), 2);
    draw(settings.finish_below, cool_pen, "finish under " + shown(settings.finish_below), 2);
    if (settings.hold_at)
        draw(*settings.hold_at, {0.18, removed_pen.dashes}, "hold at " + shown(*settings.hold_at), 1);
    return labels;
}

CurveFrame frame_of(const HeatBalance& balance) {
    const HeatRunSettings& settings = balance.hot.settings;
    CurveFrame frame;
    frame.low = std::min(balance.ambient, settings.finish_below).value();
    frame.high = std::max(settings.maximum, settings.rough_below).value();
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
    std::string text =
        fmt::format("warm-up {}, {}, {}, peak {}", show(run.warm_up.time), counted(run.rests, "rest"),
                    counted(run.reheats, "reheat"), show(run.peak, units));
    const auto add_cooling = [&](const std::optional<Time>& time, std::string_view to, Temperature below) {
        if (time)
            text += fmt::format(", {} {} {}", show(*time), to, show(below, units));
    };
    if (run.post_heating > Time())
        text += ", hold " + show(run.post_heating);
    add_cooling(run.cooling().to_rough, "to", boss.settings.rough_below);
    add_cooling(run.cooling().to_finish, "more to", boss.settings.finish_below);
    return text + ". ";
}

std::string plate_words(const HeatBalance& balance, UnitSystem units) {
    return "with one plate of " + held_together(show(balance.plated->plates.front(), units)) + " on it";
}

/// Empty when the balance comes to its end.
std::string bad_end(const HeatBalance& balance) {
    const HeatEnd end = end_of(balance);
    return end == HeatEnd::done ? "" : fmt::format("It does not end well: {}.", word_of(end));
}

std::string in_words(const HeatBalance& balance, UnitSystem units) {
    const auto [minimum, maximum] = limits_of(balance.hot.settings, units);
    const std::string limits = fmt::format("A ring begins between {} and {}. ", minimum, maximum);
    const std::string hot = run_in_words(balance.hot, units);
    if (!balance.plated)
        return limits + hot + bad_end(balance);
    return fmt::format("{}With nothing that carries heat off: {}Dashed, {}: {}{}", limits, hot,
                       plate_words(balance, units), run_in_words(*balance.plated, units), bad_end(balance));
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
    const auto labels = draw_levels(svg, frame, balance.hot.settings, units);
    if (balance.plated)
        svg.path(curve_path(frame, balance.plated->run.curve), plated_pen);
    svg.path(curve_path(frame, balance.hot.run.curve), curve_pen);
    draw_axes(svg, frame, units);
    draw_labels(svg, labels, {62, 84.4, 1, 44});
    double y = draw_stage_rows(svg, frame, balance, frame.bottom + 7.2);
    if (balance.plated)
        y = draw_key(svg, balance, y + 1, units);
    if (const std::string note = bad_end(balance); !note.empty())
        y += draw_note(svg, note, y);
    return svg.drawing(id, "Temperature of the boss over the time", in_words(balance, units), y + 1);
}

} // namespace ringfill
