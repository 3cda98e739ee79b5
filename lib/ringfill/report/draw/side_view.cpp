#include <ringfill/report/draw/side_view.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/view/reverse.hpp>

#include <ringfill/report/draw/labels.hpp>

namespace ringfill {
namespace {

/// Beads are drawn one by one from this size on [mm of paper].
constexpr double least_bead_width = 1.0;
constexpr double least_bead_height = 0.6;

constexpr Hatching pad_hatching{0.9, 20};

/// Rings that begin before a depth.
int rings_before(const RingRow& row, double to) {
    return std::clamp(static_cast<int>(std::floor((to - row.begin) / row.pitch + 1e-6)), 0, row.rings);
}

/// The edge of the boss at one face, from the bore outwards, set back where the face is worn.
PaperPoints face_edge(const SideView& view, double face, const PadShape* pad) {
    const double wall = view.wall(face);
    const double outside = view.drawn.outside;
    if (pad == nullptr)
        return {view.at(face, wall), view.at(face, outside)};
    const double inner = std::clamp(pad->inner, wall, outside);
    const double outer = std::clamp(pad->outer, wall, outside);
    const double worn = face + pad->inwards * pad->worn;
    PaperPoints edge{view.at(face, wall),  view.at(face, inner), view.at(worn, inner),
                     view.at(worn, outer), view.at(face, outer), view.at(face, outside)};
    if (!(outer < outside))
        edge.resize(4);
    if (!(inner > wall))
        edge.erase(edge.begin(), edge.begin() + 2);
    return edge;
}

void draw_boss(Svg& svg, const SideView& view, const std::vector<PadShape>& pads) {
    const auto near = face_edge(view, 0, pads.empty() ? nullptr : &pads[0]);
    const auto far = face_edge(view, view.length(), pads.size() < 2 ? nullptr : &pads[1]);
    auto shape = near;
    ranges::push_back(shape, far | ranges::views::reverse);
    ranges::push_back(shape, view.wall_line(view.length(), 0));
    svg.hatched({shape}, boss_hatching);
    svg.path(open_path(near), outline_pen);
    svg.path(open_path(far), outline_pen);
    svg.line(near.back(), far.back(), view.drawn.has_boss ? outline_pen : removed_pen);
}

PaperPoints block(const SideView& view, double from, double to, double inner, double outer) {
    return {view.at(from, inner), view.at(from, outer), view.at(to, outer), view.at(to, inner)};
}

/// The grooves, filled before the bore is welded, cut again after it. The job does not say where they are:
/// all are spread evenly.
void draw_grooves(Svg& svg, const SideView& view, bool before_welding) {
    const auto& grooves = view.drawn.bore.grooves;
    for (std::size_t i = 0; i < grooves.size(); ++i) {
        const double depth =
            view.length() * static_cast<double>(i + 1) / static_cast<double>(grooves.size() + 1);
        const double half = mm(grooves[i].width) / 2;
        const double floor = mm(grooves[i].diameter) / 2;
        const auto cut = block(view, depth - half, depth + half,
                               before_welding ? view.wall(depth) : view.drawn.finish, floor);
        if (before_welding && view.drawn.plan.grooves[i].volume > Volume()) {
            svg.cover(cut, outline_pen);
            svg.hatched({cut}, weld_hatching);
        }
        if (!before_welding && floor > view.drawn.finish)
            svg.path(open_path(cut), finish_pen);
    }
}

void draw_pad(Svg& svg, const SideView& view, const PadShape& pad) {
    const double inner = pad.inner + view.drawn.row.begin; // past both by the overhang
    const double outer = pad.outer - view.drawn.row.begin;
    const auto from = [&](double radius) {
        return block(view, pad.face - pad.inwards * pad.over, pad.face + pad.inwards * pad.worn, radius,
                     outer);
    };
    svg.hatched({from(std::clamp(inner, view.drawn.skim, outer))}, pad_hatching);
    svg.path(closed_path(from(inner)), outline_pen);
    svg.line(view.at(pad.face, pad.inner), view.at(pad.face, pad.outer), finish_pen);
}

} // namespace

PaperPoints SideView::wall_line(double from, double to) const {
    const unsigned steps = drawn.skimmed ? 1 : 100;
    return sampled(steps + 1, [&](double i) {
        const double depth = from + (to - from) * i / steps;
        return at(depth, wall(depth));
    });
}

std::string layer_path(const SideView& view, std::size_t layer, double to) {
    const DrawnBore& drawn = view.drawn;
    const auto [begin, pitch, rings, valley] = drawn.row;
    const double scale = view.scale;
    const double radius = drawn.layer(layer);
    if (scale * pitch < least_bead_width || scale * drawn.least_layer() < least_bead_height)
        return open_path({view.at(begin, radius), view.at(std::min(to, drawn.row.end()), radius)});
    // A bead is a parabola from valley to valley. Relative commands: 40 layers of 100 rings stay small.
    const std::string bead = fmt::format("q{},{} {},0", svg_number(scale * pitch / 2, 4),
                                         svg_number(2 * scale * valley, 3), svg_number(scale * pitch, 4));
    std::string path = open_path({view.at(begin, radius + 2 * valley / 3)}); // on average the radius
    for (int i = rings_before(drawn.row, to); i > 0; --i)
        path += bead;
    return path;
}

void draw_weld(Svg& svg, const SideView& view, double to) {
    const DrawnBore& drawn = view.drawn;
    const double begin = drawn.row.begin;
    const auto wall = view.wall_line(begin, to);
    auto shape = wall;
    ranges::push_back(shape, PaperPoints{view.at(to, drawn.end), view.at(begin, drawn.end)});
    const double spacing = view.scale * drawn.least_layer();
    svg.cover(shape, no_pen);
    svg.hatched({shape}, weld_hatching_between(spacing));
    std::string between;
    for (std::size_t n = 1; n < drawn.layers(); ++n)
        between += layer_path(view, n, to);
    svg.path(between, layer_pen(spacing));
    svg.path(layer_path(view, drawn.layers(), to), outline_pen);
    svg.path(open_path(wall), outline_pen);
    for (const double end : {begin, drawn.row.end()})
        if (end <= to)
            svg.line(view.at(end, view.wall(end)), view.at(end, drawn.end), outline_pen);
    const double inside = std::min(to, view.length());
    if (drawn.skimmed)
        svg.path(open_path(sampled(
                     61, [&](double i) { return view.at(inside * i / 60, view.worn(inside * i / 60)); })),
                 removed_pen);
    svg.line(view.at(0, drawn.finish), view.at(inside, drawn.finish), finish_pen);
}

void draw_ring_numbers(Svg& svg, const SideView& view, double to, double y) {
    const RingRow& row = view.drawn.row;
    const int rings = rings_before(row, to);
    const double room = (text_width(std::to_string(rings)) + 0.9) / (view.scale * row.pitch);
    for (const int n : numbers_shown(rings, room)) {
        const PaperPoint bead = view.at(row.begin + (n - 0.5) * row.pitch, view.drawn.end);
        svg.line({bead.x, bead.y + 0.6}, {bead.x, y - letter_rise + 0.3}, thin_pen);
        svg.text({bead.x, y}, {std::to_string(n)}, Anchor::middle);
    }
}

std::vector<PadShape> pad_shapes(const DrawnBore& drawn) {
    const double length = mm(drawn.bore.length);
    std::vector<PadShape> shapes;
    for (std::size_t face = 0; face < std::min<std::size_t>(drawn.bore.faces.size(), 2); ++face) {
        const Face& worn = drawn.bore.faces[face];
        const FacePad& pad = drawn.plan.faces[face];
        const double thickness = mm(static_cast<double>(pad.layers) * pad.bead.layer_height());
        // A face worn deeper than the bore is long is a slip in the job; the drawing stays within the bore.
        shapes.push_back({face == 0 ? 0 : length, face == 0 ? 1.0 : -1.0,
                          std::min(mm(worn.build), length / 2), thickness - mm(worn.build),
                          mm(worn.inner) / 2, mm(worn.outer) / 2});
    }
    return shapes;
}

void draw_metal(Svg& svg, const SideView& view) {
    const auto pads = pad_shapes(view.drawn);
    draw_boss(svg, view, pads);
    for (const Hole& hole : view.drawn.bore.holes) // turned into the section
        draw_hole(svg, view.drawn, hole, view.wall(mm(hole.depth)), view.scale,
                  [&](double radius, double side) {
                      return view.at(mm(hole.depth) + side * mm(hole.diameter) / 2, radius);
                  });
    draw_grooves(svg, view, true);
    draw_weld(svg, view, view.drawn.row.end());
    for (const PadShape& pad : pads)
        draw_pad(svg, view, pad);
    draw_grooves(svg, view, false);
}

} // namespace ringfill
