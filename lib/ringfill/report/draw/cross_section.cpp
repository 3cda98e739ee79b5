#include <ringfill/report/draw/drawings.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include <ringfill/report/draw/end_view.hpp>
#include <ringfill/report/draw/labels.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

void draw_holes(Svg& svg, const EndView& view, const DrawnBore& drawn) {
    for (const Hole& hole : drawn.bore.holes)
        draw_hole(svg, drawn, hole, drawn.skim, view.scale, [&](double radius, double side) {
            const double off = side * mm(hole.diameter) / 2;
            const double clock = hole.clock.value();
            const auto [x, y] = view.at(std::sqrt(std::max(0.0, radius * radius - off * off)), clock);
            return PaperPoint{x + off * view.scale * std::cos(clock), y + off * view.scale * std::sin(clock)};
        });
}

void draw_metal(Svg& svg, const EndView& view, const DrawnBore& drawn) {
    const auto draw_circle = [&](double radius, const Pen& pen, std::string_view figure) {
        svg.circle(view.centre, view.scale * radius, pen, figure);
    };
    const auto curve = [&](int steps, const auto& radius_at) {
        return sampled(static_cast<std::size_t>(steps), [&](double i) {
            const double angle = 2 * std::numbers::pi * i / steps;
            return view.at(radius_at(angle), angle);
        });
    };
    const auto circle = [&](double radius) { return curve(180, [&](double) { return radius; }); };
    const auto worn =
        curve(drawn.worn.steps(), [&](double angle) { return mm(drawn.worn.radius(in_si<Angle>(angle))); });
    const auto wall = drawn.skimmed ? circle(drawn.skim) : worn;
    svg.hatched({circle(drawn.outside), wall}, boss_hatching);
    draw_holes(svg, view, drawn);
    svg.hatched({wall, circle(drawn.end)}, weld_hatching_between(view.scale * drawn.least_layer()));
    for (std::size_t n = 1; n < drawn.layers(); ++n)
        draw_circle(drawn.layer(n), layer_pen(view.scale * (drawn.layer(n - 1) - drawn.layer(n))),
                    fmt::format("layer_{}", n));
    draw_circle(drawn.end, outline_pen, fmt::format("layer_{}", drawn.layers()));
    draw_circle(drawn.target, removed_pen, "weld_to_diameter");
    svg.path(closed_path(worn), drawn.skimmed ? removed_pen : outline_pen, "worn_outline");
    if (drawn.skimmed)
        draw_circle(drawn.skim, outline_pen, "skim_diameter");
    draw_circle(drawn.finish, finish_pen, "finish_diameter");
    draw_circle(drawn.outside, drawn.has_boss ? outline_pen : removed_pen,
                drawn.has_boss ? "boss_diameter" : "");
}

/// The axes with the hours of the clock, and the middle of the worn outline.
void draw_clock(Svg& svg, const EndView& view, const DrawnBore& drawn) {
    const auto [x, y] = view.centre;
    const double out = view.scale * drawn.outside + 1;
    svg.line({x - out, y}, {x + out, y}, chain_pen);
    svg.line({x, y - out}, {x, y + out}, chain_pen);
    svg.text({x, y - out - 0.9}, {"12"}, Anchor::middle);
    svg.text({x + out + 0.7, y + half_letter}, {"3"});
    svg.text({x, y + out + 0.9 + 2 * half_letter}, {"6"}, Anchor::middle);
    svg.text({x - out - 0.7, y + half_letter}, {"9"}, Anchor::end);
    if (const auto worn = drawn.worn.centre())
        for (const double arm : {1.1, -1.1}) {
            const PaperPoint at = view.at(*worn);
            svg.line({at.x - 1.1, at.y - arm}, {at.x + 1.1, at.y + arm}, thin_pen);
        }
}

/// Where the wear is deepest; one diameter on the axis says nothing of the place.
std::string wear_text(const DrawnBore& drawn) {
    const std::string radius = held_together("R " + show(drawn.deepest.radius, drawn.units));
    return is_same_all_round(drawn.plan.survey)
               ? fmt::format("wear {}, one diameter measured", radius)
               : fmt::format("deepest wear {} at {}", radius, clock_text(drawn.deepest.clock));
}

std::vector<Label> labels_of(const EndView& view, const DrawnBore& drawn) {
    const PaperPoint deepest = view.at(drawn.deepest);
    std::vector<Label> labels{{drawn.has_boss ? "boss " + drawn.diameter(drawn.outside) : "boss not given",
                               view.at(drawn.outside, std::numbers::pi / 5), 1}, // upper right
                              {"A: " + wear_text(drawn), {deepest.x + 1.8, deepest.y}}};
    if (const auto worn = drawn.worn.centre())
        labels.push_back(
            {fmt::format("worn centre {} off at {}", drawn.length(worn->radius), clock_text(worn->clock)),
             view.at(*worn), 2});
    constexpr std::size_t most_hole_labels = 4;
    const auto& holes = drawn.bore.holes;
    for (std::size_t i = 0; i < std::min(holes.size(), most_hole_labels); ++i) {
        const Hole& hole = holes[i];
        const bool named = i + 1 < most_hole_labels || holes.size() == most_hole_labels;
        labels.push_back(
            {named ? fmt::format("hole {} at {}", drawn.diameter(hole.diameter), clock_text(hole.clock))
                   : fmt::format("{} more holes", holes.size() - i),
             view.at((drawn.skim + drawn.outside) / 2, hole.clock.value()), static_cast<int>(3 + i)});
    }
    return labels;
}

std::string in_words(const DrawnBore& drawn) {
    std::string text = drawn.has_boss ? fmt::format("Boss {}. ", drawn.diameter(drawn.outside))
                                      : "The boss is not given; its outline is broken. ";
    text += fmt::format("Worn outline: {}. ", wear_text(drawn));
    if (const auto worn = drawn.worn.centre())
        text += fmt::format("The centre of the worn outline lies {} off the target axis, at {}. ",
                            show(worn->radius, drawn.units), clock_text(worn->clock));
    text += drawn.sizes_in_words();
    for (const Hole& hole : drawn.bore.holes)
        text += fmt::format(" Hole {} at {}, other end {}.", drawn.diameter(hole.diameter),
                            clock_text(hole.clock), hole.other_end.value_or("not given"));
    return text + " Below, detail A: the wall at the deepest wear, enlarged and turned upright.";
}

} // namespace

std::string cross_section(const DrawnBore& drawn, const std::string& id) {
    constexpr double outermost = 21.5; // radius of the boss on the paper
    constexpr double detail_top = 63;
    const EndView view{{27, 27.5}, outermost / drawn.outside};
    Svg svg;
    draw_metal(svg, view, drawn);
    draw_clock(svg, view, drawn);
    svg.circle(view.at(drawn.deepest), 1.8, thin_pen);
    draw_labels(svg, labels_of(view, drawn), {54.5, 84.3, 1, 56});
    const double height = draw_ring_detail(svg, drawn, detail_top, view.scale);
    return svg.drawing(id, "Cross-section of the bore, seen from the near face, as welded", in_words(drawn),
                       detail_top + height + 2, 1 / view.scale);
}

} // namespace ringfill
