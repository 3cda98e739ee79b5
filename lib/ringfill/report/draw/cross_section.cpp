#include <ringfill/report/draw/cross_section.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include <ringfill/report/draw/hatch.hpp>
#include <ringfill/report/draw/label_places.hpp>
#include <ringfill/report/draw/ring_detail.hpp>
#include <ringfill/report/draw/ring_section.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double paper_width = 85;
constexpr PaperPoint centre{27, 27.5};
constexpr double outermost = 21.5; ///< radius of the boss on the paper [mm]
constexpr LabelColumn column{54.5, 84.3, 1, 56};
constexpr double detail_top = 63;
constexpr std::size_t most_hole_labels = 4;

/// A bore seen from the near face.
struct EndView {
    const RingSection& section;
    double scale; ///< mm of paper for a millimetre

    PaperPoint at(double radius, Angle clock) const {
        return {centre.x + scale * radius * std::sin(clock.value()),
                centre.y - scale * radius * std::cos(clock.value())};
    }
    std::vector<PaperPoint> round(double radius) const {
        std::vector<PaperPoint> points;
        for (int degree = 0; degree < 360; degree += 2)
            points.push_back(at(radius, in_si<Angle>(degree * std::numbers::pi / 180)));
        return points;
    }
    std::vector<PaperPoint> worn() const {
        const auto radii = section.worn.radii();
        std::vector<PaperPoint> points;
        for (std::size_t i = 0; i < radii.size(); ++i)
            points.push_back(at(mm(radii[i]), in_si<Angle>(2 * std::numbers::pi * static_cast<double>(i) /
                                                           static_cast<double>(radii.size()))));
        return points;
    }
};

/// A hole as a strip through the wall; one whose other end is blind or not known goes half as far, open.
void draw_hole(Svg& svg, const EndView& view, const Hole& hole) {
    const bool through = hole.other_end && *hole.other_end != "blind";
    const double half = mm(hole.diameter) / 2;
    const double outside = view.section.outside();
    const auto edge = [&](double radius, double side) {
        const double along = std::sqrt(std::max(0.0, radius * radius - half * half));
        const PaperPoint on = view.at(along, hole.clock);
        return PaperPoint{on.x + side * half * view.scale * std::cos(hole.clock.value()),
                          on.y + side * half * view.scale * std::sin(hole.clock.value())};
    };
    const double from = view.section.skim;
    const double to = through ? outside : (from + outside) / 2;
    svg.cover({edge(from, -1), edge(to, -1), edge(to, 1), edge(from, 1)}, {0, {}});
    for (const double side : {-1.0, 1.0})
        svg.line(edge(from, side), edge(to, side), hole_pen(through, 2 * half * view.scale));
    svg.line(view.at(from, hole.clock), view.at(outside, hole.clock), chain_pen);
}

void draw_metal(Svg& svg, const EndView& view, const WornBore& bore) {
    const RingSection& section = view.section;
    const auto worn = view.worn();
    const auto wall = section.skimmed ? view.round(section.skim) : worn;
    svg.path(hatch({view.round(section.outside()), wall}, boss_hatching), hatch_pen);
    for (const Hole& hole : bore.holes)
        draw_hole(svg, view, hole);
    svg.path(hatch({wall, view.round(section.end)}, weld_hatching_between(view.scale * least_layer(section))),
             hatch_pen);
    double before = section.skim;
    for (std::size_t n = 0; n < section.layers.size(); ++n) {
        const bool last = n + 1 == section.layers.size();
        svg.circle(centre, view.scale * section.layers[n],
                   last ? outline_pen : layer_pen(view.scale * (before - section.layers[n])),
                   fmt::format("layer_{}", n + 1));
        before = section.layers[n];
    }
    svg.circle(centre, view.scale * section.target, removed_pen, "weld_to_diameter");
    svg.path(closed_path(worn), section.skimmed ? removed_pen : outline_pen, "worn_outline");
    if (section.skimmed)
        svg.circle(centre, view.scale * section.skim, outline_pen, "skim_diameter");
    svg.circle(centre, view.scale * section.finish, finish_pen, "finish_diameter");
    if (section.boss)
        svg.circle(centre, view.scale * *section.boss, outline_pen, "boss_diameter");
    else
        svg.circle(centre, view.scale * section.outside(), removed_pen);
}

void draw_clock(Svg& svg, const EndView& view) {
    const double out = view.scale * view.section.outside() + 1;
    svg.line({centre.x - out, centre.y}, {centre.x + out, centre.y}, chain_pen);
    svg.line({centre.x, centre.y - out}, {centre.x, centre.y + out}, chain_pen);
    const double half_letter = 0.36 * letter_size;
    svg.text({centre.x, centre.y - out - 0.9}, {"12"}, Anchor::middle);
    svg.text({centre.x + out + 0.7, centre.y + half_letter}, {"3"});
    svg.text({centre.x, centre.y + out + 0.9 + 2 * half_letter}, {"6"}, Anchor::middle);
    svg.text({centre.x - out - 0.7, centre.y + half_letter}, {"9"}, Anchor::end);
}

void draw_worn_centre(Svg& svg, PaperPoint at) {
    constexpr double arm = 1.1;
    svg.line({at.x - arm, at.y - arm}, {at.x + arm, at.y + arm}, thin_pen);
    svg.line({at.x - arm, at.y + arm}, {at.x + arm, at.y - arm}, thin_pen);
}

std::string hole_text(const Hole& hole, UnitSystem units) {
    return fmt::format("hole {} at {}", diameter_text(mm(hole.diameter) / 2, units), clock_text(hole.clock));
}

/// Where the wear is deepest; one diameter on the axis says nothing of the place.
std::string wear_text(const BorePlan& plan, const RingSection& section, UnitSystem units) {
    const std::string radius = held_together("R " + show(section.deepest.radius, units));
    return is_same_all_round(plan.survey)
               ? fmt::format("wear {}, one diameter measured", radius)
               : fmt::format("deepest wear {} at {}", radius, clock_text(section.deepest.clock));
}

std::vector<Label> labels_of(const EndView& view, const WornBore& bore, const BorePlan& plan,
                             UnitSystem units) {
    const RingSection& section = view.section;
    std::vector<Label> labels;
    const Angle upper_right = in_si<Angle>(std::numbers::pi / 5);
    labels.push_back({section.boss ? "boss " + diameter_text(*section.boss, units) : "boss not given",
                      view.at(section.outside(), upper_right), 1});
    const PaperPoint deepest = view.at(mm(section.deepest.radius), section.deepest.clock);
    labels.push_back({"A: " + wear_text(plan, section, units), {deepest.x + 1.8, deepest.y}, 0});
    if (const auto worn = section.worn.centre())
        labels.push_back({fmt::format("worn centre {} off at {}", length_text(worn->radius, units),
                                      clock_text(worn->clock)),
                          view.at(mm(worn->radius), worn->clock), 2});
    const bool all = bore.holes.size() <= most_hole_labels;
    const std::size_t told = all ? bore.holes.size() : most_hole_labels - 1;
    for (std::size_t i = 0; i < bore.holes.size() && i <= told; ++i)
        labels.push_back({i < told ? hole_text(bore.holes[i], units)
                                   : fmt::format("{} more holes", bore.holes.size() - told),
                          view.at((section.skim + section.outside()) / 2, bore.holes[i].clock),
                          static_cast<int>(3 + i)});
    return labels;
}

std::string in_words(const WornBore& bore, const BorePlan& plan, const RingSection& section,
                     UnitSystem units) {
    std::string text = section.boss ? fmt::format("Boss {}. ", diameter_text(*section.boss, units))
                                    : "The boss is not given; its outline is broken. ";
    text += fmt::format("Worn outline: {}. ", wear_text(plan, section, units));
    if (const auto worn = section.worn.centre())
        text += fmt::format("The centre of the worn outline lies {} off the target axis, at {}. ",
                            show(worn->radius, units), clock_text(worn->clock));
    text += sizes_in_words(section, units);
    for (const Hole& hole : bore.holes)
        text += fmt::format(" Hole {} at {}, {}.", diameter_text(mm(hole.diameter) / 2, units),
                            clock_text(hole.clock),
                            hole.other_end ? "other end " + *hole.other_end : "other end not given");
    return text + " Below, detail A: the wall at the deepest wear, enlarged and turned upright.";
}

} // namespace

std::string cross_section(const WornBore& bore, const BorePlan& plan, UnitSystem units,
                          const std::string& id) {
    const RingSection section = ring_section(bore, plan);
    const EndView view{section, outermost / section.outside()};
    Svg svg;
    draw_metal(svg, view, bore);
    draw_clock(svg, view);
    if (const auto worn = section.worn.centre())
        draw_worn_centre(svg, view.at(mm(worn->radius), worn->clock));
    svg.circle(view.at(mm(section.deepest.radius), section.deepest.clock), 1.8, thin_pen);
    draw_labels(svg, labels_of(view, bore, plan, units), column);

    const RingDetail detail = ring_detail(section);
    svg.text({1, detail_top - 2.6}, {fmt::format("Detail A, {:.3g} times the view above, turned upright",
                                                 detail.scale / view.scale)});
    draw_ring_detail(svg, section, detail, detail_top, units);
    return svg.drawing({id, "Cross-section of the bore, seen from the near face, as welded",
                        in_words(bore, plan, section, units), paper_width, detail_top + detail.height + 2,
                        1 / view.scale});
}

} // namespace ringfill
