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

PaperPoints round(const EndView& view, double radius) {
    PaperPoints points;
    for (int degree = 0; degree < 360; degree += 2)
        points.push_back(view.at(radius, degree * std::numbers::pi / 180));
    return points;
}

PaperPoints round(const EndView& view, const std::vector<Length>& radii) {
    PaperPoints points;
    for (std::size_t i = 0; i < radii.size(); ++i)
        points.push_back(view.at(mm(radii[i]), 2 * std::numbers::pi * static_cast<double>(i) /
                                                   static_cast<double>(radii.size())));
    return points;
}

void draw_holes(Svg& svg, const EndView& view, const DrawnBore& drawn) {
    for (const Hole& hole : drawn.bore.holes)
        draw_hole(svg, drawn, hole, drawn.skim, view.scale, [&](double radius, double side) {
            const double off = side * mm(hole.diameter) / 2;
            const PaperPoint on =
                view.at(std::sqrt(std::max(0.0, radius * radius - off * off)), hole.clock.value());
            return PaperPoint{on.x + off * view.scale * std::cos(hole.clock.value()),
                              on.y + off * view.scale * std::sin(hole.clock.value())};
        });
}

void draw_metal(Svg& svg, const EndView& view, const DrawnBore& drawn) {
    const auto circle = [&](double radius, const Pen& pen, std::string_view figure) {
        svg.circle(view.centre, view.scale * radius, pen, figure);
    };
    const auto worn = round(view, drawn.worn.radii());
    const auto wall = drawn.skimmed ? round(view, drawn.skim) : worn;
    svg.hatched({round(view, drawn.outside()), wall}, boss_hatching);
    draw_holes(svg, view, drawn);
    svg.hatched({wall, round(view, drawn.end)}, weld_hatching_between(view.scale * drawn.least_layer()));
    double before = drawn.skim;
    for (std::size_t n = 1; n <= drawn.layers.size(); ++n) {
        const double radius = drawn.layers[n - 1];
        circle(radius, n == drawn.layers.size() ? outline_pen : layer_pen(view.scale * (before - radius)),
               fmt::format("layer_{}", n));
        before = radius;
    }
    circle(drawn.target, removed_pen, "weld_to_diameter");
    svg.path(closed_path(worn), drawn.skimmed ? removed_pen : outline_pen, "worn_outline");
    if (drawn.skimmed)
        circle(drawn.skim, outline_pen, "skim_diameter");
    circle(drawn.finish, finish_pen, "finish_diameter");
    circle(drawn.outside(), drawn.boss ? outline_pen : removed_pen, drawn.boss ? "boss_diameter" : "");
}

/// The axes with the hours of the clock, and the middle of the worn outline.
void draw_clock(Svg& svg, const EndView& view, const DrawnBore& drawn) {
    const auto [x, y] = view.centre;
    const double out = view.scale * drawn.outside() + 1;
    svg.line({x - out, y}, {x + out, y}, chain_pen);
    svg.line({x, y - out}, {x, y + out}, chain_pen);
    const double half_letter = 0.36 * letter_size;
    svg.text({x, y - out - 0.9}, {"12"}, Anchor::middle);
    svg.text({x + out + 0.7, y + half_letter}, {"3"});
    svg.text({x, y + out + 0.9 + 2 * half_letter}, {"6"}, Anchor::middle);
    svg.text({x - out - 0.7, y + half_letter}, {"9"}, Anchor::end);
    if (const auto worn = drawn.worn.centre()) {
        constexpr double arm = 1.1;
        const PaperPoint at = view.at(*worn);
        svg.line({at.x - arm, at.y - arm}, {at.x + arm, at.y + arm}, thin_pen);
        svg.line({at.x - arm, at.y + arm}, {at.x + arm, at.y - arm}, thin_pen);
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
    std::vector<Label> labels;
    labels.push_back({drawn.boss ? "boss " + drawn.diameter(*drawn.boss) : "boss not given",
                      view.at(drawn.outside(), std::numbers::pi / 5), 1}); // upper right
    const PaperPoint deepest = view.at(drawn.deepest);
    labels.push_back({"A: " + wear_text(drawn), {deepest.x + 1.8, deepest.y}, 0});
    if (const auto worn = drawn.worn.centre())
        labels.push_back(
            {fmt::format("worn centre {} off at {}", drawn.length(worn->radius), clock_text(worn->clock)),
             view.at(*worn), 2});
    constexpr std::size_t most_hole_labels = 4;
    const auto& holes = drawn.bore.holes;
    const std::size_t named = holes.size() <= most_hole_labels ? holes.size() : most_hole_labels - 1;
    for (std::size_t i = 0; i < holes.size() && i <= named; ++i)
        labels.push_back(
            {i < named
                 ? fmt::format("hole {} at {}", drawn.diameter(holes[i].diameter), clock_text(holes[i].clock))
                 : fmt::format("{} more holes", holes.size() - named),
             view.at((drawn.skim + drawn.outside()) / 2, holes[i].clock.value()), static_cast<int>(3 + i)});
    return labels;
}

std::string in_words(const DrawnBore& drawn) {
    std::string text = drawn.boss ? fmt::format("Boss {}. ", drawn.diameter(*drawn.boss))
                                  : "The boss is not given; its outline is broken. ";
    text += fmt::format("Worn outline: {}. ", wear_text(drawn));
    if (const auto worn = drawn.worn.centre())
        text += fmt::format("The centre of the worn outline lies {} off the target axis, at {}. ",
                            show(worn->radius, drawn.units), clock_text(worn->clock));
    text += drawn.sizes_in_words();
    for (const Hole& hole : drawn.bore.holes)
        text += fmt::format(" Hole {} at {}, {}.", drawn.diameter(hole.diameter), clock_text(hole.clock),
                            hole.other_end ? "other end " + *hole.other_end : "other end not given");
    return text + " Below, detail A: the wall at the deepest wear, enlarged and turned upright.";
}

} // namespace

std::string cross_section(const WornBore& bore, const BorePlan& plan, UnitSystem units,
                          const std::string& id) {
    constexpr double outermost = 21.5; // radius of the boss on the paper
    constexpr double detail_top = 63;
    const DrawnBore drawn = drawn_bore(bore, plan, units);
    const EndView view{{27, 27.5}, outermost / drawn.outside()};
    Svg svg;
    draw_metal(svg, view, drawn);
    draw_clock(svg, view, drawn);
    svg.circle(view.at(drawn.deepest), 1.8, thin_pen);
    draw_labels(svg, labels_of(view, drawn), {54.5, 84.3, 1, 56});
    const double height = draw_ring_detail(svg, drawn, detail_top, view.scale);
    return svg.drawing({id, "Cross-section of the bore, seen from the near face, as welded", in_words(drawn),
                        paper_width, detail_top + height + 2, 1 / view.scale});
}

} // namespace ringfill
