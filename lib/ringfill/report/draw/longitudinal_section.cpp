#include <ringfill/report/draw/drawings.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/view/enumerate.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/report/draw/labels.hpp>
#include <ringfill/report/draw/side_view.hpp>

namespace ringfill {
namespace {

/// The whole view to its scale, so that all that is drawn has room, and x of its right edge.
std::pair<SideView, double> whole_view(const DrawnBore& drawn) {
    constexpr double left = 5;
    constexpr double widest = 75;
    constexpr double highest = 44;
    constexpr double top = 9.5;     // over it stand the names of the faces and the numbers of the holes
    double near = -drawn.row.begin; // before the near face
    double far = std::max(drawn.row.end(), mm(drawn.bore.length));
    double outside = drawn.outside;
    for (const PadShape& pad : pad_shapes(drawn)) {
        double& end = pad.inwards > 0 ? near : far;
        end = std::max(end, pad.face + pad.over);
        outside = std::max(outside, pad.outer - drawn.row.begin);
    }
    const double scale = std::min(widest / (near + far), highest / outside);
    return {{drawn, scale, left + scale * near, top + scale * outside}, left + scale * (near + far)};
}

/// The names of the faces over the drawing, with lines down to them, and the numbers of the holes.
void draw_heads(Svg& svg, const SideView& view) {
    const PaperPoint near = view.at(0, view.drawn.outside);
    const PaperPoint far = view.at(view.length(), view.drawn.outside);
    const double half_near = text_width("near face") / 2;
    const double half_far = text_width("far face") / 2;
    const double near_x = std::max(near.x, 1 + half_near);
    const double far_x = std::clamp(far.x, near_x + half_near + 2 + half_far, paper_width - 1 - half_far);
    const auto draw_head = [&](const std::string& name, PaperPoint face, double x) {
        svg.text({x, 3.4}, {name}, Anchor::middle);
        svg.path(open_path({face, {face.x, 5.6}, {x, 4.4}}), thin_pen);
    };
    draw_head("near face", near, near_x);
    draw_head("far face", far, far_x);
    std::vector<std::pair<double, std::size_t>> holes;
    for (const Hole& hole : view.drawn.bore.holes)
        holes.emplace_back(view.at(mm(hole.depth), 0).x, holes.size() + 1);
    std::sort(holes.begin(), holes.end());
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

/// Draws a horizontal dimension from one x to another under what it measures, its extension lines from
/// `begin` on. Its text stands over the line, between 4.1 mm over it and 2 mm under it, or to the right of it
/// where the line is too short and there is room.
void draw_dimension(Svg& svg, double from, double to, double begin, double y, const std::string& text) {
    constexpr double past = 0.8;    // extension lines go past the line
    constexpr double outside = 2.6; // from the line to a text beside it
    constexpr double stroke = 0.7;  // half of an oblique stroke at an end
    for (const double x : {from, to}) {
        svg.line({x, begin}, {x, y + past}, thin_pen);
        svg.line({x - stroke, y + stroke}, {x + stroke, y - stroke}, outline_pen);
    }
    const double width = text_width(text);
    const bool fits = width + 2 * past < to - from;
    const bool beside = !fits && to + outside + width < paper_width - 1;
    svg.line({from, y}, {beside ? to + outside - 0.6 : to, y}, thin_pen);
    const double least = 1 + width / 2;
    const double middle = std::clamp((from + to) / 2, least, std::max(least, paper_width - 1 - width / 2));
    svg.text(beside ? PaperPoint{to + outside, y + half_letter} : PaperPoint{middle, y - 1.1}, {text},
             beside ? Anchor::start : Anchor::middle);
}

/// Dimensions under the axis. @param begin y below the numbers of the rings. @param y of the first line.
/// @return y below them.
double draw_dimensions(Svg& svg, const SideView& view, double begin, double y) {
    constexpr double row_step = 6.1;
    const DrawnBore& drawn = view.drawn;
    const double overhang = mm(drawn.bore.overhang);
    const auto add_row = [&](double from, double to, std::string_view name, Length length) {
        draw_dimension(svg, view.at(from, 0).x, view.at(to, 0).x, begin, y,
                       fmt::format("{} {}", name, drawn.length(length)));
        y += row_step;
    };
    add_row(0, view.length(), "length", drawn.bore.length);
    if (overhang > 0) {
        add_row(-overhang, view.length() + overhang, "weld over", drawn.plan.build.welded_length);
        add_row(-overhang, 0, "overhang", drawn.bore.overhang);
    }
    return y - row_step + 2.2;
}

std::vector<Label> detail_labels(const SideView& view, double to) {
    const DrawnBore& drawn = view.drawn;
    std::vector<Label> labels;
    const auto add_label = [&](const std::string& text, double radius, int rank) {
        labels.push_back({text, view.at(to, radius), rank});
    };
    add_label(drawn.skimmed ? "wall, skimmed" : "wall, worn as it is", view.wall(to), 3);
    if (drawn.skimmed)
        add_label("worn surface", view.worn(to), 4);
    add_label("finish " + drawn.diameter(drawn.finish), drawn.finish, 1);
    for (std::size_t n = 1; n <= drawn.layers(); ++n) {
        const bool at_end = n == 1 || n == drawn.layers();
        const double before = n == 1 ? view.wall(to) : drawn.layer(n - 1);
        if (at_end || drawn.is_labelled(n))
            add_label(fmt::format("layer {}", n), (before + drawn.layer(n)) / 2,
                      at_end ? 2 : static_cast<int>(10 + n));
    }
    return labels;
}

/// Detail B under its name, the first rings at the near face, enlarged: layers labelled, rings numbered.
/// @return y below it.
double draw_side_detail(Svg& svg, const SideView& whole, double y) {
    constexpr double width = 46;
    constexpr double number_row = 5.5;
    const double top = y + (letter_rise + 2.4);
    const DrawnBore& drawn = whole.drawn;
    const RingRow& row = drawn.row;
    const double outer = drawn.detail_outer(); // how much of the wall is shown
    const double scale = std::min(24 / (outer - drawn.end), width / (3 * row.pitch)); // three rings at least
    const double rings = std::floor(width / (scale * row.pitch) + 1e-9);              // whole ones
    const double to = std::min(row.end(), row.begin + rings * row.pitch);
    const SideView view{drawn, scale, 3 - scale * row.begin, top + scale * outer};
    svg.text({1, y + letter_rise},
             {fmt::format("Detail B, near face, {:.3g} times the view above", scale / whole.scale)});
    const double inside = std::min(to, view.length());
    auto boss = view.wall_line(0, inside);
    ranges::push_back(boss, PaperPoints{view.at(inside, outer), view.at(0, outer)});
    svg.hatched({boss}, boss_hatching);
    for (const double face : {0.0, view.length()})
        if (face <= std::max(inside, 0.0))
            svg.line(view.at(face, drawn.skim), view.at(face, outer), outline_pen);
    if (drawn.detail_has_boss())
        svg.line(view.at(0, outer), view.at(inside, outer), outline_pen);
    draw_weld(svg, view, to);
    if (to < row.end())
        svg.line(view.at(to, outer), view.at(to, drawn.end), chain_pen);
    const double below = scale * (outer - drawn.end);
    draw_ring_numbers(svg, view, to, top + below + number_row - 1);
    const double height = std::max(31.0, below + number_row);
    draw_labels(svg, detail_labels(view, to), beside_detail(top, height));
    return top + (height + 1.5);
}

/// What the section cannot show by itself, a sentence each: holes, grooves, faces, plates.
std::vector<std::string> notes_of(const DrawnBore& drawn) {
    constexpr std::size_t most_holes = 6;
    const WornBore& bore = drawn.bore;
    const auto& holes = bore.holes;
    std::vector<std::string> notes;
    const std::size_t shown = holes.size() <= most_holes ? holes.size() : most_holes - 1;
    for (std::size_t i = 0; i < shown; ++i) {
        const std::string end = holes[i].other_end.value_or("other end not given");
        const bool plain = !holes[i].other_end || end == "open" || end == "blind";
        notes.push_back(fmt::format("Hole H{}: {}, {} from the near face, at {}, {}.", i + 1,
                                    drawn.diameter(holes[i].diameter), drawn.length(holes[i].depth),
                                    clock_text(holes[i].clock), plain ? end : "with a fitting"));
    }
    if (shown < holes.size())
        notes.push_back(fmt::format("{} more holes are drawn; the job lists them.", holes.size() - shown));
    if (!holes.empty())
        notes.emplace_back("Holes are turned into the section.");
    for (const auto& [i, groove] : ranges::views::enumerate(bore.grooves))
        notes.push_back(fmt::format(
            "Groove {}: {}, {} wide, {}{}. The job does not say where along the bore.", i + 1,
            drawn.diameter(groove.diameter), drawn.length(groove.width),
            drawn.plan.grooves[i].volume > Volume() ? "filled first" : "gone with the skim, nothing to fill",
            groove.diameter > bore.finish_diameter ? ", cut again after boring" : ""));
    for (const auto& [i, face] : ranges::views::enumerate(bore.faces))
        notes.push_back(fmt::format("Face {}: built up by {} and {} of stock, {} to {}. {}", i + 1,
                                    drawn.length(face.build), drawn.length(bore.stock),
                                    drawn.diameter(face.inner), drawn.diameter(face.outer),
                                    i == 0 ? "The job does not say which face; drawn at the near one."
                                           : "The job does not say which face; drawn at the far one."));
    for (const Plate& plate : bore.attached)
        notes.push_back(
            fmt::format("A plate of {} stands on the boss, not drawn.", drawn.length(plate.thickness)));
    if (!drawn.skimmed)
        notes.emplace_back("Layers are counted from the mean radius of the worn surface: over the deepest "
                           "wear the first is drawn thicker than it is laid.");
    if (!drawn.has_boss)
        notes.emplace_back("The boss is not given; its outline is broken.");
    return notes;
}

std::string in_words(const DrawnBore& drawn, const std::vector<std::string>& notes) {
    const WornBore& bore = drawn.bore;
    const std::string past =
        bore.overhang > Length() ? fmt::format(", {} past each face", drawn.length(bore.overhang)) : "";
    return fmt::format(
        "Length {} between the faces, weld over {}{}. {} rings a layer, {} apart, numbered from "
        "the near face. {}{} Below, detail B: the first rings at the near face, enlarged.",
        drawn.length(bore.length), drawn.length(drawn.plan.build.welded_length), past, drawn.row.rings,
        held_together(show_pitch(drawn.plan.bead.pitch, drawn.units)), drawn.sizes_in_words(),
        listed(notes, "", [](const std::string& note) { return " " + note; }));
}

} // namespace

std::string longitudinal_section(const DrawnBore& drawn, const std::string& id) {
    const auto [view, right] = whole_view(drawn);
    Svg svg;
    draw_metal(svg, view);
    svg.line({1, view.axis_y}, {std::min(paper_width - 1, right + 4), view.axis_y}, chain_pen);
    draw_heads(svg, view);
    // The numbers stand in the bore, or below the axis where it is too narrow for them.
    const double weld_y = view.at(0, drawn.end).y;
    const bool inside = view.axis_y - weld_y > 7;
    const double numbers_y = (inside ? weld_y + 1.4 : view.axis_y + 0.6) + letter_rise;
    draw_ring_numbers(svg, view, drawn.row.end(), numbers_y);
    double y = draw_dimensions(svg, view, numbers_y + 0.8, std::max(view.axis_y, numbers_y) + 5.2);
    y = draw_side_detail(svg, view, y + 0.8);
    const auto notes = notes_of(drawn);
    for (const std::string& note : notes)
        y += draw_note(svg, note, y) + 0.2;
    return svg.drawing(id, "Section along the bore, upper half, as welded", in_words(drawn, notes), y + 1,
                       1 / view.scale);
}

} // namespace ringfill
