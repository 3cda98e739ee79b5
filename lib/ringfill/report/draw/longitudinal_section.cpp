#include <ringfill/report/draw/longitudinal_section.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/report/draw/dimension_line.hpp>
#include <ringfill/report/draw/label_places.hpp>
#include <ringfill/report/draw/side_detail.hpp>
#include <ringfill/report/draw/side_metal.hpp>
#include <ringfill/report/draw/side_notes.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double paper_width = 85;
constexpr double left = 5;
constexpr double widest = 75;
constexpr double highest = 44;
constexpr double top = 9.5; ///< over it stand the names of the faces and the numbers of the holes
constexpr double row_step = 6.1;

/// What is drawn reaches this far [mm].
struct Reach {
    double near; ///< before the near face
    double far;  ///< depth
    double outside;
};

Reach reach_of(const RingSection& section, const WornBore& bore, const BorePlan& plan) {
    const RingRow row = ring_row(bore, plan);
    Reach reach{-row.begin, std::max(row.end(), mm(bore.length)), section.outside()};
    if (const auto pad = pad_shape(bore, plan, 0)) {
        reach.near = std::max(reach.near, pad->over);
        reach.outside = std::max(reach.outside, pad->outer + pad->overhang);
    }
    if (const auto pad = pad_shape(bore, plan, 1)) {
        reach.far = std::max(reach.far, mm(bore.length) + pad->over);
        reach.outside = std::max(reach.outside, pad->outer + pad->overhang);
    }
    return reach;
}

/// The names of the faces over the drawing, with lines down to them, and the numbers of the holes.
void draw_heads(Svg& svg, const SideFrame& frame, const RingSection& section, const WornBore& bore) {
    const PaperPoint near = frame.at(0, section.outside());
    const PaperPoint far = frame.at(mm(bore.length), section.outside());
    const double half_near = text_width("near face") / 2;
    const double half_far = text_width("far face") / 2;
    const double near_x = std::max(near.x, 1 + half_near);
    const double far_x = std::clamp(far.x, near_x + half_near + 2 + half_far, paper_width - 1 - half_far);
    svg.text({near_x, 3.4}, {"near face"}, Anchor::middle);
    svg.text({far_x, 3.4}, {"far face"}, Anchor::middle);
    svg.path(open_path({near, {near.x, 5.6}, {near_x, 4.4}}), thin_pen);
    svg.path(open_path({far, {far.x, 5.6}, {far_x, 4.4}}), thin_pen);
    std::vector<std::pair<double, std::size_t>> holes;
    for (std::size_t i = 0; i < bore.holes.size(); ++i)
        holes.emplace_back(frame.at(mm(bore.holes[i].depth), 0).x, i + 1);
    std::ranges::sort(holes);
    double taken = near.x + 0.6;
    for (const auto& [x, number] : holes) {
        const std::string text = fmt::format("H{}", number);
        const double half = text_width(text) / 2 + 0.3;
        if (x - half < taken || x + half > far.x - 0.6)
            continue;
        svg.text({x, near.y - 0.9}, {text}, Anchor::middle);
        taken = x + half;
    }
}

/// Dimensions under the axis. @param begin y below the numbers of the rings. @param y of the first line.
/// @return y below them.
double draw_dimensions(Svg& svg, const SideFrame& frame, const WornBore& bore, const BorePlan& plan,
                       double begin, double y, UnitSystem units) {
    const double length = mm(bore.length);
    const double overhang = mm(bore.overhang);
    const auto add = [&](double from, double to, const std::string& text) {
        draw_dimension(svg, {frame.at(from, 0).x, frame.at(to, 0).x, y, begin, paper_width, text});
        y += row_step;
    };
    add(0, length, "length " + length_text(bore.length, units));
    if (overhang > 0) {
        add(-overhang, length + overhang, "weld over " + length_text(plan.build.welded_length, units));
        add(-overhang, 0, fmt::format("overhang {}", length_text(bore.overhang, units)));
    }
    return y - row_step + 2.2;
}

double draw_notes(Svg& svg, const std::vector<std::string>& notes, double y) {
    for (const std::string& note : notes) {
        const auto lines = wrap_label(note, paper_width - 2);
        svg.text({1, y + letter_rise}, lines);
        y += letter_rise + letter_hang + line_step * static_cast<double>(lines.size() - 1) + 0.2;
    }
    return y;
}

std::string in_words(const WornBore& bore, const BorePlan& plan, const RingSection& section,
                     const std::vector<std::string>& notes, UnitSystem units) {
    std::string text =
        fmt::format("Length {} between the faces, weld over {}", length_text(bore.length, units),
                    length_text(plan.build.welded_length, units));
    if (bore.overhang > Length())
        text += fmt::format(", {} past each face", length_text(bore.overhang, units));
    text += fmt::format(". {} rings a layer, {} apart, numbered from the near face. ",
                        plan.layers.front().rings, held_together(show_pitch(plan.bead.pitch, units)));
    text += sizes_in_words(section, units);
    for (const std::string& note : notes)
        text += " " + note;
    return text + " Below, detail B: the first rings at the near face, enlarged.";
}

} // namespace

std::string longitudinal_section(const WornBore& bore, const BorePlan& plan, UnitSystem units,
                                 const std::string& id) {
    const RingSection section = ring_section(bore, plan);
    const RingRow row = ring_row(bore, plan);
    const Reach reach = reach_of(section, bore, plan);
    const double scale = std::min(widest / (reach.near + reach.far), highest / reach.outside);
    const SideFrame frame{scale, left + scale * reach.near, top + scale * reach.outside};
    Svg svg;
    draw_metal(svg, frame, section, bore, plan);
    svg.line({1, frame.axis_y},
             {std::min(paper_width - 1, left + scale * (reach.near + reach.far) + 4), frame.axis_y},
             chain_pen);
    draw_heads(svg, frame, section, bore);
    // The numbers stand in the bore, or below the axis where it is too narrow for them.
    const double weld_y = frame.at(0, section.end).y;
    const bool inside = frame.axis_y - weld_y > 7;
    const double numbers_y = (inside ? weld_y + 1.4 : frame.axis_y + 0.6) + letter_rise;
    draw_ring_numbers(svg, frame, section, row, row.end(), numbers_y);
    double y = std::max(frame.axis_y, numbers_y) + 5.2;
    y = draw_dimensions(svg, frame, bore, plan, numbers_y + 0.8, y, units);
    y += 0.8;

    const SideDetail detail = side_detail(section, row);
    svg.text({1, y + letter_rise},
             {fmt::format("Detail B, near face, {:.3g} times the view above", detail.scale / scale)});
    y += letter_rise + 2.4;
    draw_side_detail(svg, section, row, detail, y, mm(bore.length), units);
    y += detail.height + 1.5;
    const auto notes = side_notes(bore, plan, units);
    y = draw_notes(svg, notes, y);
    return svg.drawing({id, "Section along the bore, upper half, as welded",
                        in_words(bore, plan, section, notes, units), paper_width, y + 1, 1 / scale});
}

} // namespace ringfill
